using Seasonwright.Core.Quantities;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Says what a team has to lift with.</summary>
public sealed record SetGym(Gym Gym) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-gym", Gym.Racks.Count);

    internal override void Decide(Draft draft)
    {
        Check(draft, Gym);
        draft.Set(SetupFacets.Gym, default, Gym);
    }

    internal static void Check(Draft draft, Gym gym)
    {
        Within(gym.Racks.Count, 0, Gym.MostRacks, "racks");
        if (gym.Racks.Select(rack => rack.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count() != gym.Racks.Count) draft.Refuse("rack-twice", "gym.racks");
        foreach (var rack in gym.Racks)
        {
            draft.Require(rack.Name, "gym.racks.name", SeasonDraft.LongestName);
            Within(rack.Plates.Count, 0, GymRack.MostPlates, "racks.plates");
            Within(rack.Collar, 0, RackPlate.MostMass, "racks.collar");
            if (rack.Plates.Select(plate => plate.Mass).Distinct().Count() != rack.Plates.Count) draft.Refuse("plate-twice", "gym.racks.plates", rack.Name);
            foreach (var plate in rack.Plates)
            {
                Exact(plate.Mass, RackPlate.MostMass, "racks.plates.mass");
                Within(plate.Pairs, 1, RackPlate.MostPairs, "racks.plates.pairs");
            }
        }
        var counts = gym.Counts ?? [];
        if (counts.Select(count => count.Equipment).Distinct().Count() != counts.Count) draft.Refuse("count-twice", "gym.counts");
        foreach (var count in counts) Within(count.Count, 1, EquipmentCount.Most, "counts.count");
        if (gym.AtOne is { } share) Within(share, 1, Gym.MostAtOne, "atOne");
        foreach (var steps in new[] { gym.Dumbbells, gym.Kettlebells }.OfType<WeightSteps>()) Check(draft, steps, "gym.steps");

        void Exact(decimal mass, decimal most, string field) => Mass(draft, mass, most, $"gym.{field}");

        void Within(decimal number, decimal least, decimal most, string field)
        {
            if (number < least || number > most) draft.Refuse("workout-number", $"gym.{field}", number, least, most);
        }
    }

    /// <summary>Weights from the lightest to the heaviest, in a gym or at home.</summary>
    internal static void Check(Draft draft, WeightSteps steps, string subject)
    {
        Mass(draft, steps.From, RackPlate.MostMass, $"{subject}.from");
        Mass(draft, steps.Step, RackPlate.MostMass, $"{subject}.step");
        if (steps.To < steps.From || steps.To > RackPlate.MostMass) draft.Refuse("workout-number", $"{subject}.to", steps.To, steps.From, RackPlate.MostMass);
    }

    private static void Mass(Draft draft, decimal mass, decimal most, string subject)
    {
        if (mass is <= 0 || mass > most || !decimal.IsInteger(mass * 1_000)) draft.Refuse("plate-mass", subject, mass, most);
    }
}
