using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>The year in sentences, for screen readers and for what the pointer rests on.</summary>
internal sealed class YearWords(Season season, Setup setup)
{
    private readonly bool monthFirst = setup.Locale.DateOrder == DateOrder.MonthDayYear;

    // Every track names every week.
    private readonly Dictionary<WeekId, string> weeks = [];

    /// <summary>"11 to 17 October", "27 September to 3 October", or month first where the team writes so.</summary>
    public string Days(DaySpan days)
    {
        var (first, last) = (days.First, days.Last);
        if (first == last)
            return Date(first);
        return first.Month == last.Month && first.Year == last.Year
            ? Say("span.within" + Order, first.Day, last.Day, Month(first))
            : Say("span.across" + Order, first.Day, Month(first), last.Day, Month(last));
    }

    /// <summary>"16 October".</summary>
    public string Date(DateOnly day) => Say("date" + Order, day.Day, Month(day));

    /// <summary>"Saturday 16 October".</summary>
    public string Day(DateOnly day) => Say("day", Say($"day.{day.DayOfWeek}"), Date(day));

    /// <summary>"Sat 16 Oct".</summary>
    public string ShortDay(DateOnly day) =>
        Say("day", Say($"day.{day.DayOfWeek}.short"), Say("date" + Order, day.Day, Say($"month.{day.Month}.short")));

    /// <summary>"16 Oct".</summary>
    public string ShortDate(DateOnly day) => Say("date" + Order, day.Day, Say($"month.{day.Month}.short"));

    /// <summary>"Week 15, 11 to 17 October".</summary>
    public string Week(SeasonWeek week) => weeks.TryGetValue(week.Id, out var said) ? said : weeks[week.Id] = Say("week", week.Number, Days(week.Days));

    /// <summary>"Week 15, 11 to 17 October, competition, 92 per cent, one home match".</summary>
    public string Summary(SeasonWeek week)
    {
        List<string> parts = [Week(week)];
        if (season.PhaseOf(week) is { } phase)
            parts.Add(Phase(phase.Phase));
        if (season.TargetOf(week.Id) is { } target)
            parts.Add(Say("percent", target.PercentOf(setup.ReferenceWeek).Value));
        parts.AddRange(Matches(week));
        return Join(parts);
    }

    /// <summary>"one home match", "2 away matches", "one match called off"; or that there is none.</summary>
    public IEnumerable<string> Matches(SeasonWeek week)
    {
        var matches = season.MatchesIn(week).ToList();
        if (matches.Count == 0)
            return [Say("matches.none")];
        var counts = matches.Where(match => !match.IsOff)
            .GroupBy(match => match.Venue?.ToString() ?? "Unknown", StringComparer.Ordinal)
            .Select(group => Count($"matches.{group.Key}", group.Count()));
        var off = matches.Count(match => match.IsOff);
        return off == 0 ? counts : counts.Append(Count("matches.off", off));
    }

    /// <summary>A phase inside a sentence: the coach's own name as written, a kind's in small letters.</summary>
    public static string Phase(Phase phase) => phase.Name ?? Small(Sentences.Say($"phase.{phase.Kind}"));

    public static string Block(Block block) => block.Name ?? Small(Sentences.Say($"block.{block.Kind}"));

    /// <summary>"Saturday 16 October, 18:30, home to Turnes, League, 7 days since the last match".</summary>
    public string Match(Match match, int? since)
    {
        List<string> parts = [];
        if (match.Days is { } days)
            parts.Add(days.Length == 1 ? Day(days.First) : Days(days));
        if (match.KickOff is { } time)
            parts.Add(time.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture));
        parts.Add(Say($"match.{match.Venue?.ToString() ?? "Unknown"}", match.Opponent ?? Say("match.nobody")));
        parts.AddRange(Details(match));
        if (since is { } count) parts.Add(Count("match.since", count));
        return Join(parts);
    }

    /// <summary>What there is to say of a match besides when, where and whom: "League", "round 3", "provisional".</summary>
    public static IEnumerable<string> Details(Match match)
    {
        if (match.Competition is { } competition) yield return competition;
        if (match.Round is { } round) yield return round;
        if (match.Series is { } series) yield return Say("match.series", series.Game, series.BestOf);
        if (match.Importance == Importance.Key) yield return Say("match.key");
        if (match.Importance == Importance.Friendly) yield return Say("match.friendly");
        if (match.Status != MatchStatus.Confirmed) yield return Say($"match.status.{match.Status}");
        if (match.Condition?.Words is { } words) yield return words;
        if (match.Source?.Vanished == true) yield return Say("list.vanished");
        if (match.Result is { } result) yield return Say("match.result", result);
    }

    /// <summary>"4 practices of 90 minutes"; or that none are entered.</summary>
    public string Practices(Practices? practices) => practices switch
    {
        null => Say("practices.none"),
        { Count: 0 } => Count("practices", 0),
        _ => Say("practices.minutes", Count("practices", practices.Count), (practices.Minutes ?? setup.UsualWeek.Practices.Minutes).Value),
    };

    /// <summary>"National camp, 4 to 8 January, 60 per cent of training possible".</summary>
    public string Event(Event e) => Join([e.Title, .. Kind(e) is { } kind ? [kind] : Array.Empty<string>(), Days(e.Days), .. Details(e)]);

    /// <summary>"exams", where the title does not say it.</summary>
    public static string? Kind(Event e) =>
        Forms($"event.{e.Kind}")[0] is var kind && !e.Title.Contains(kind, StringComparison.OrdinalIgnoreCase) && e.Kind != EventKind.Other ? Small(kind) : null;

    /// <summary>What there is to say of an event besides what and when: "for four players", "60 per cent of training possible".</summary>
    public static IEnumerable<string> Details(Event e)
    {
        if (e.Part is { } part) yield return part;
        if (e.For is { } whom) yield return Say("event.for", whom);
        if (e.Training is { } training) yield return Say("event.training", training.Value);
        if (e.Nights is { } nights and > 0) yield return Count("event.nights", nights);
        if (e.Provisional) yield return Say("event.provisional");
        if (e.Source?.Vanished == true) yield return Say("list.vanished");
    }

    /// <summary>"Competition I, weeks 9 to 24".</summary>
    public static string Run(string name, SeasonWeek first, SeasonWeek last) =>
        first.Number == last.Number ? Say("run.one", name, first.Number) : Say("run", name, first.Number, last.Number);

    /// <summary>"92 per cent, of it matches 26 per cent".</summary>
    public string Load(WeekLoad load)
    {
        var match = load.Match.PercentOf(setup.ReferenceWeek).Value;
        if (load.Target is not { } target)
            return match > 0 ? Say("load.match-only", match) : Say("load.none");
        var percent = Say("percent", target.PercentOf(setup.ReferenceWeek).Value);
        return match > 0 ? Join([percent, Say("load.match", match)]) : percent;
    }

    public static string Join(IEnumerable<string> parts) => string.Join(", ", parts);

    public static string Small(string word) => word.Length == 0 ? word : char.ToLowerInvariant(word[0]) + word[1..];

    private string Order => monthFirst ? ".month-first" : "";

    private static string Month(DateOnly day) => Say($"month.{day.Month}");
}
