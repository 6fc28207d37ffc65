using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Squad;

/// <summary>What one player does of a session's workout: its exercises or what is done in their place, and the weights.</summary>
/// <param name="Fit">Whether the player takes part.</param>
/// <param name="MostMinutes">Of the session; null for all of its minutes.</param>
/// <param name="Lines">In the order of the workout; none for who takes no part, or is to be asked first.</param>
/// <param name="IsModified">Something is otherwise than for the others; why is nobody else's business.</param>
/// <param name="IsMinor">Under 18 on the day: nothing is lifted close to a maximum.</param>
public sealed record AthleteWork(PersonId Person, FitKind Fit, Minutes? MostMinutes, ValueList<WorkLine> Lines, bool IsModified, bool IsMinor)
{
    /// <summary>Repetitions that are left at least in what is done in the place of something else: nobody knows its weight yet. Common practice, no source.</summary>
    private const int NewReserve = 3;

    /// <summary>For who is under 18: in every set so many repetitions are left at least, and with its weight so many are possible. Common practice, no source; local rules and the coach's eye come first.</summary>
    private const int MinorReserve = 2, MinorPossible = 6;

    /// <summary>Takes part with something to lift.</summary>
    public bool IsLifting => Lines.Count > 0;

    /// <summary>Modified, and nobody said how.</summary>
    public bool AsksFirst => Fit == FitKind.ToBeAsked;

    /// <summary>What every player does whose session it is; who is not with the team, or for whom it is not, is left out.</summary>
    /// <param name="swaps">Exercises that the coach chose in the place of written ones, for everybody who may do them; null for none.</param>
    /// <returns>In the order of the players; none where nothing is written for the session.</returns>
    public static ValueList<AthleteWork> Of(Season season, Setup setup, Session session, IEnumerable<Player> players, RackLoads loads, IReadOnlyDictionary<WorkoutItemId, ExerciseId>? swaps = null)
    {
        if (WorkoutWeek.Of(season, session) is not { } workout) return [];
        var atHand = setup.Gym.AtHand.ToHashSet();
        var usual = Done(workout, Restrictions.None, atHand, setup, swaps).ToValueList();
        return players.Select(player => Of(player)).OfType<AthleteWork>().ToValueList();

        AthleteWork? Of(Player player)
        {
            var day = PlayerDay.Of(player, season, setup, session.Day);
            if (day.Fits.FirstOrDefault(fit => fit.Session.Id == session.Id) is not { } fit) return null;
            var isMinor = player.Athlete.IsMinorOn(session.Day);
            if (fit.Kind is FitKind.NotAtAll or FitKind.ToBeAsked) return new(player.Id, fit.Kind, fit.MostMinutes, [], fit.Kind == FitKind.ToBeAsked, isMinor);
            var restrictions = day.Standing.Availability.Restrictions;
            var lines = (restrictions.Tags.Count == 0 ? usual : Done(workout, restrictions, atHand, setup, swaps)).Select(line => Weighed(line, player, isMinor)).ToValueList();
            return new(player.Id, fit.Kind, fit.MostMinutes, lines, fit.MostMinutes is not null || !lines.Select(Content).SequenceEqual(usual.Select(Content)), isMinor);
        }

        WorkLine Weighed(WorkLine line, Player player, bool isMinor)
        {
            var (maximum, body) = (player.MaximumOn(session.Day, line.Exercise, setup)?.Weight, player.BodyMassOn(session.Day));
            var prescription = isMinor ? ForMinor(line.Prescription, made => Load(made).Target) : line.Prescription;
            return line with { Prescription = prescription, Load = Load(prescription) };

            GivenLoad Load(Prescription made) => GivenLoad.Of(made, line.Exercise, maximum, body, isMinor ? loads.NeverAbove : loads,
                atVelocity: made.Effort is { Kind: EffortKind.Velocity, Amount: { } velocity } ? player.ProfileOn(session.Day, line.Exercise.Id)?.LoadAt(velocity) : null);
        }
    }

    /// <summary>Before anybody's weights: what is written, or the nearest that may be done with what is there. What nothing comes near to is left out.</summary>
    /// <param name="swaps">What the coach chose in the place of written exercises; null for none.</param>
    internal static IEnumerable<WorkLine> Done(WorkoutWeek workout, Restrictions restrictions, IReadOnlySet<Equipment> atHand, Setup setup, IReadOnlyDictionary<WorkoutItemId, ExerciseId>? swaps = null)
    {
        var exercises = setup.Exercises;
        return from part in workout.Parts
               from item in part.Items
               let written = setup.Exercise(item.Item.Exercise)
               let chosen = swaps is not null && swaps.TryGetValue(item.Item.Id, out var swap) && setup.Exercise(swap) is { } other && Substitutes.For(other, restrictions, atHand, exercises) == other ? other : written
               let done = written is null ? null : Substitutes.For(chosen, restrictions, atHand, exercises)
               where done is not null
               let isInstead = done.Id != written.Id
               select new WorkLine(item.Item, part.Part, done, isInstead ? item.Prescription with { Effort = InPlace(item.Prescription, written) } : item.Prescription, GivenLoad.Unknown, isInstead);
    }

    private static (WorkoutItemId Item, ExerciseId Exercise, Prescription Prescription) Content(WorkLine line) => (line.Item.Id, line.Exercise.Id, line.Prescription);

    /// <summary>No harder than what is written: an easy week stays easy for who does something else.</summary>
    private static Effort InPlace(Prescription written, Exercise exercise) => written.Unit != WorkUnit.Repetitions || written.Effort.Kind == EffortKind.Free ? Effort.Free
        : Effort.Reserve(Math.Clamp(GivenLoad.ReserveOf(written, exercise) ?? NewReserve, NewReserve, Effort.BoundsOf(EffortKind.Reserve)!.Value.Most));

    /// <inheritdoc cref="Kept"/>
    internal static Prescription ForMinor(Prescription written, Func<Prescription, Weight?> target) => Kept(written, target, MinorReserve, MinorPossible);

    /// <summary>No harder than that so many repetitions are left in every set, and so many are possible with its weight.</summary>
    /// <param name="target">The weight that a prescription comes to; null where nobody can tell.</param>
    internal static Prescription Kept(Prescription written, Func<Prescription, Weight?> target, int leastReserve, int leastPossible)
    {
        var (table, counted) = (RepTable.Textbook, written.Unit == WorkUnit.Repetitions ? written.Amount : 0);
        var possible = Math.Max(leastPossible, counted + leastReserve);
        var most = written with { Effort = Effort.OfMax(Math.Round(table.Percent(Math.Min(possible, table.Most)), 1, MidpointRounding.ToZero)) };
        var reserve = counted == 0 ? leastReserve : possible - counted;
        return written.Effort switch
        {
            { Kind: EffortKind.Reserve, Amount: { } left } when left < reserve => written with { Effort = Effort.Reserve(reserve) },
            { Kind: EffortKind.OfMax, Amount: { } percent } when percent > most.Effort.Amount => most,
            { Kind: EffortKind.Fixed or EffortKind.OfBodyMass or EffortKind.Velocity } when target(written)?.Kilograms > target(most)?.Kilograms => most,
            _ => written,
        };
    }
}

/// <summary>One exercise as a player does it.</summary>
/// <param name="Part">Of the workout, in which it lies.</param>
/// <param name="Instead">It is done in the place of what is written.</param>
public sealed record WorkLine(WorkoutItem Item, WorkoutPart Part, Exercise Exercise, Prescription Prescription, GivenLoad Load, bool Instead);
