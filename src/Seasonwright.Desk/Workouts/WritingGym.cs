using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents;

namespace Seasonwright.Desk.Workouts;

/// <summary>Saying field by field what a team has to lift with, as it is typed.</summary>
/// <param name="Edit">What makes it so; null where nothing is otherwise, or something is wrong.</param>
/// <param name="Wrong">What is wrong, and how to mend it.</param>
public sealed partial record WritingGym(SetGym? Edit, string? Wrong)
{
    /// <summary>
    /// Takes what was typed into a field: "rack/0/name", "rack/0/bar" ("20 kg"), "rack/0/plates" ("25x2 20 15 1.25"), "rack/0/collar", "dumbbells" ("2-30 by 2 kg"), "kettlebells", "stack" ("5 kg"),
    /// "trap", "at-one" ("4"), "count/trapBar" ("6", nothing for not counted); a tick, "yes" or nothing: "rack/0/platform", "rack/0/broken", "never-above", "has/bench"; or a press: "rack/add", "rack/0/remove".
    /// </summary>
    public static WritingGym Write(Setup setup, string field, string text)
    {
        var (gym, typed) = (setup.Gym, text.Trim());
        return field.Split('/') switch
        {
            ["rack", "add"] => Made(gym with { Racks = [.. gym.Racks, (gym.Racks is [.., var last] ? last : GymRack.Usual(setup.Locale.MassUnit)) with { Name = FreeName(), IsBroken = false }] }),
            ["rack", var place, "remove"] when At(place) is { } at => Made(gym with { Racks = gym.Racks.Where((_, other) => other != at).ToValueList() }),
            ["rack", var place, var part] when At(place) is { } at => OfRack(at, part),
            ["dumbbells"] => Steps(typed, steps => gym with { Dumbbells = steps }),
            ["kettlebells"] => Steps(typed, steps => gym with { Kettlebells = steps }),
            ["stack"] => Perhaps(typed, weight => gym with { StackStep = weight }),
            ["trap"] => Perhaps(typed, weight => gym with { TrapBar = weight }),
            ["at-one"] => typed.Length == 0 ? Made(gym with { AtOne = null }) : Whole() is { } share ? Made(gym with { AtOne = share }) : Trouble(),
            ["count", var word] when Enum.TryParse<Equipment>(word, true, out var one) && Enum.IsDefined(one) => typed.Length == 0 || Whole() is not null ? Made(gym with { Counts = Counted(one, typed.Length == 0 ? null : Whole()) }) : Trouble(),
            ["never-above"] => Made(gym with { NeverAbove = typed.Length > 0 }),
            ["has", var word] when Enum.TryParse<Equipment>(word, true, out var one) && Enum.IsDefined(one) => Made(gym with { Equipment = gym.Equipment.Where(other => other != one).Concat(typed.Length > 0 ? [one] : []).Order().ToValueList() }),
            _ => new(null, null),
        };

        WritingGym Made(Gym now) => now.Equals(setup.Gym) ? new(null, null) : Decider.Decide(setup, new SetGym(now)) is Refused refused ? new(null, refused.Reasons[0].Sentence) : new(new SetGym(now), null);

        WritingGym Trouble() => new(null, Refusal.Say("gym-text", "gym", typed).Sentence);

        int? Whole() => int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

        ValueList<EquipmentCount>? Counted(Equipment one, int? count) =>
            (gym.Counts ?? []).Where(other => other.Equipment != one).Concat(count is { } some ? [new(one, some)] : []).OrderBy(other => other.Equipment).ToValueList() is { Count: > 0 } counts ? counts : null;

        int? At(string place) => int.TryParse(place, NumberStyles.None, CultureInfo.InvariantCulture, out var at) && at < gym.Racks.Count ? at : null;

        string FreeName() => Enumerable.Range(1, Gym.MostRacks + 1).Select(number => number.ToString(CultureInfo.InvariantCulture)).First(name => gym.Racks.All(rack => rack.Name != name));

        WritingGym OfRack(int at, string part)
        {
            var rack = gym.Racks[at];
            GymRack? now = part switch
            {
                "name" => rack with { Name = typed },
                "bar" => WeightOf(typed) is { } bar ? rack with { Bar = bar } : null,
                "plates" => PlatesOf(typed) is { } plates ? rack with { Plates = plates } : null,
                "collar" => Number(typed) is { } collar ? rack with { Collar = collar } : null,
                "platform" => rack with { HasPlatform = typed.Length > 0 },
                "broken" => rack with { IsBroken = typed.Length > 0 },
                _ => rack,
            };
            return now is null ? Trouble() : Made(gym with { Racks = gym.Racks.Select((other, place) => place == at ? now : other).ToValueList() });
        }

        WritingGym Steps(string what, Func<WeightSteps?, Gym> with)
        {
            if (what.Length == 0) return Made(with(null));
            return StepsText.Read(what, setup.Locale.MassUnit) is { } steps ? Made(with(steps)) : Trouble();
        }

        WritingGym Perhaps(string what, Func<Weight?, Gym> with) => what.Length == 0 ? Made(with(null)) : WeightOf(what) is { } weight ? Made(with(weight)) : Trouble();

        Weight? WeightOf(string what)
        {
            var plain = what.ToLowerInvariant().Replace(',', '.');
            return Weight.TryParse(plain, out var weight) ? weight : Number(plain) is { } amount && Weight.IsPossible(amount, setup.Locale.MassUnit) ? new Weight(amount, setup.Locale.MassUnit) : null;
        }
    }

    /// <summary>"25x2 20 15 1.25", as it would be typed.</summary>
    public static string Plates(GymRack rack, LocaleSettings locale) =>
        string.Join(' ', rack.Plates.Select(plate => WorkWords.Number(plate.Mass, locale) + (plate.Pairs > 1 ? FormattableString.Invariant($"x{plate.Pairs}") : "")));

    private static ValueList<RackPlate>? PlatesOf(string text)
    {
        List<RackPlate> plates = [];
        // A blank, a semicolon or a comma with a blank behind parts plates; a comma without is a decimal sign.
        foreach (var word in Parts().Split(text.Trim().ToLowerInvariant()).Where(word => word.Length > 0))
        {
            if (PlateForm().Match(word.Replace(',', '.')) is not { Success: true } match || Number(match.Groups["mass"].Value) is not { } mass) return null;
            plates.Add(new RackPlate(mass, match.Groups["pairs"].Success ? int.Parse(match.Groups["pairs"].Value, CultureInfo.InvariantCulture) : 1));
        }
        return plates.OrderByDescending(plate => plate.Mass).ToValueList();
    }

    private static decimal? Number(string text) => decimal.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number < 100_000 ? number : null;

    [GeneratedRegex(@"[;\s]+|,\s+", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Parts();

    [GeneratedRegex(@"^(?<mass>\d{1,3}(\.\d{1,3})?)(x(?<pairs>\d{1,2}))?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex PlateForm();
}
