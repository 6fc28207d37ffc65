using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>
/// Small plans in a few letters. A week is "B80": its kind and its load in points; weeks stand behind each other, a phase before
/// the weeks it covers. The normal hard week is 1,000 AU, so one point is 10 AU, and a match loads 10 points.
/// </summary>
internal static class Plans
{
    public static readonly DateOnly Monday = new(2027, 7, 5);

    private static readonly Dictionary<char, WeekKind> Kinds = new()
    {
        ['I'] = WeekKind.Introductory,
        ['B'] = WeekKind.Building,
        ['O'] = WeekKind.Overload,
        ['U'] = WeekKind.Unloading,
        ['T'] = WeekKind.Taper,
        ['C'] = WeekKind.Competition,
        ['G'] = WeekKind.Congested,
        ['E'] = WeekKind.ReEntry,
        ['X'] = WeekKind.Break,
        ['R'] = WeekKind.Reduced,
        ['N'] = WeekKind.Transition,
    };

    private static readonly Dictionary<string, PhaseKind> Phases = new(StringComparer.Ordinal)
    {
        ["GP"] = PhaseKind.GeneralPreparation,
        ["SP"] = PhaseKind.SpecificPreparation,
        ["PC"] = PhaseKind.PreCompetition,
        ["CO"] = PhaseKind.Competition,
        ["PK"] = PhaseKind.Peak,
        ["TR"] = PhaseKind.Transition,
    };

    /// <summary>A team of 1,000 AU a normal hard week and matches of 100 AU, with figures of its own.</summary>
    public static Setup Team(params (string Rule, string Figure, string Value)[] figures) => figures.Select(figure => (SetupEdit)new SetRuleParameter(new(figure.Rule, figure.Figure), figure.Value))
        .Prepend(new SetReferenceWeek(new Load(1000))).Prepend(new SetMatchLoad(new MatchLoad(new Minutes(20), new Rpe(5m), new Rpe(5m))))
        .Aggregate(Setup.Empty(new("team")), (setup, edit) => setup.With(Assert.IsType<Accepted>(Decider.Decide(setup, edit)).Step));

    /// <param name="weeks">"GP: I50 B60 CO: C70 - X"; a dash for a week nobody planned, "?80" for a load without a kind.</param>
    public static Season Of(string weeks, params SeasonEdit[] more)
    {
        List<SeasonEdit> edits = [];
        PhaseKind? phase = null;
        var number = 0;
        foreach (var word in weeks.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (word.EndsWith(':'))
            {
                phase = Phases[word[..^1]];
                continue;
            }
            var id = Week(++number);
            if (phase is { } kind) edits.Add(new PaintPhase(id, id, new($"p{kind}{edits.OfType<PaintPhase>().Count(paint => paint.Kind != kind)}"), kind, new($"rest{number}")));
            if (Kinds.TryGetValue(word[0], out var weekKind)) edits.Add(new SetWeekKind(id, id, weekKind));
            if (word.Length > 1) edits.Add(new SetWeekLoad(id, id, new Load(10 * int.Parse(word[1..], System.Globalization.CultureInfo.InvariantCulture))));
        }
        var start = new StartSeason(Monday, DayOfWeek.Monday, new(Enumerable.Range(1, number).Select(Week)), new("Harbour Vale"));
        return edits.Concat(more).Prepend(start).Aggregate(Season.Empty(new("s")), (season, edit) => season.With(Assert.IsType<Accepted>(Decider.Decide(season, edit)).Step));
    }

    public static WeekId Week(int number) => new($"w{number}");

    /// <param name="day">1 is the Monday of week 1, 6 its Saturday.</param>
    public static SeasonEdit Match(int week, int day, Importance importance = Importance.Regular, TimeOnly? at = null) =>
        new SetMatch(new Match(new($"m{week}.{day}"), Day(week, day), KickOff: at, Importance: importance));

    public static DateOnly Day(int week, int day) => Monday.AddDays(7 * (week - 1) + day - 1);

    /// <summary>Emphasis over weeks, by the team's first qualities: "maximum-strength", "power", "speed", "aerobic", "high-intensity", "hypertrophy".</summary>
    public static SeasonEdit Stress(int first, int last, string quality, int level) => new SetEmphasis(Week(first), Week(last), new(quality), (Emphasis)level);

    public static SeasonEdit Test(int week, int day, string battery = "Strength") => new SetTestDay(new TestDay(new($"t{week}.{day}"), Day(week, day), battery));

    public static SeasonEdit Event(EventKind kind, int week, int day, int days, int? training = null, params Leg[] legs) =>
        new SetEvent(new Event(new($"e{week}.{day}"), kind, "Event", new DaySpan(Day(week, day), Day(week, day).AddDays(days - 1)), Training: training is { } share ? new Percent(share) : null, Legs: legs.Length > 0 ? new(legs) : null));

    /// <summary>What one rule says: its findings as "code severity weeks", or how it stands where it has none.</summary>
    public static string Say(string rule, Season season, params (string Figure, string Value)[] figures)
    {
        var checkup = Rulebook.Check(season, Team([.. figures.Select(figure => (rule, figure.Figure, figure.Value))]));
        var findings = checkup.Findings.Where(finding => finding.Rule.Id == rule)
            .OrderBy(finding => finding.Place.First).Select(finding => $"{finding.Code} {finding.Severity} {finding.Place.Weeks}{(finding.IsForced ? " forced" : "")}").ToList();
        return findings.Count > 0 ? string.Join(", ", findings) : checkup.Answers.Single(answer => answer.Rule.Id == rule).State.ToString();
    }
}
