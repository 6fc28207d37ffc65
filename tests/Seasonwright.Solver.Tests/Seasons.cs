using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;
using Seasonwright.Truth.Tests.Fixtures;

namespace Seasonwright.Solver.Tests;

/// <summary>Seasons to plan: from open fixture lists and drawn ones.</summary>
internal static class Seasons
{
    public static readonly Setup Team = Setup.Empty(new("team"));

    /// <summary>
    /// A number that the environment may give: SEED to begin elsewhere, COUNT to take more. Without it a test draws the same every time,
    /// so that what it found yesterday it finds today; ./prove propose goes further.
    /// </summary>
    public static int Given(string name, int otherwise) => Environment.GetEnvironmentVariable(name) is { } text ? int.Parse(text, System.Globalization.CultureInfo.InvariantCulture) : otherwise;

    /// <summary>The team with its answer to how the squad comes into the season.</summary>
    public static Setup Coming(StartLevel start) => With(Team, ("return-after-break-volume", "season_start", start.ToString().ToLowerInvariant()));

    /// <summary>A team with other figures.</summary>
    public static Setup With(Setup team, params (string Rule, string Figure, string Value)[] figures) =>
        figures.Aggregate(team, (now, one) => now.With(((Accepted)Decider.Decide(now, new SetRuleParameter(new(one.Rule, one.Figure), one.Value))).Step));

    /// <summary>
    /// A club's year from an open fixture list (see tests/Cases/fixtures/open-data.md): so many weeks before its first match,
    /// friendlies on the three Saturdays before it, a break over New Year where two weeks or more are free, and three weeks after the
    /// last match. The last match, the middle one and cup ties after the league stage are key.
    /// </summary>
    public static Season Of(string list, string club, int preparation, string? cup = null, bool exams = false)
    {
        var matches = FixtureList.Read(list, "Europe/London").Matches.Where(match => match.Has(club)).Select(match => (match.Day, match.Round, IsCup: false))
            .Concat(cup is null ? [] : FixtureList.Read(cup, "Europe/London").Matches.Where(match => Name(match.Home) == club || Name(match.Away) == club).Select(match => (match.Day, match.Round, IsCup: true)))
            .OrderBy(match => match.Day).ToList();
        var league = matches.Where(match => !match.IsCup).ToList();
        var first = WeekGrid.StartOfWeek(matches[0].Day, DayOfWeek.Monday).AddDays(-7 * preparation);
        var weeks = ((matches[^1].Day.DayNumber - first.DayNumber) / 7) + 4;
        List<SeasonEdit> edits = [Start(first, weeks)];
        foreach (var (day, round, isCup) in matches)
        {
            var isKey = isCup ? !round.StartsWith("League", StringComparison.Ordinal) : day == league[^1].Day || day == league[league.Count / 2].Day;
            edits.Add(Match(day, isKey ? Importance.Key : Importance.Regular, isCup ? "c" : "l"));
        }
        for (var back = 1; back <= 3; back++)
        {
            var saturday = WeekGrid.StartOfWeek(matches[0].Day, DayOfWeek.Monday).AddDays(5 - 7 * back);
            if (saturday >= first) edits.Add(Match(saturday, Importance.Friendly, "f"));
        }
        var free = Enumerable.Range(0, weeks).Select(week => new DaySpan(first.AddDays(7 * week), first.AddDays(7 * week + 6))).Where(days => matches[0].Day < days.First && days.Last < matches[^1].Day && !matches.Exists(match => days.Contains(match.Day)) && (days.First.Month == 12 && days.First.Day > 14 || days.First.Month == 1 && days.First.Day < 16)).ToList();
        if (free.Count >= 2) edits.AddRange(free.Select(days => Event(EventKind.Holiday, days, 0)));
        if (exams) edits.Add(Event(EventKind.Exams, new(new(matches[^1].Day.Year, 1, 20), new(matches[^1].Day.Year, 2, 2)), 60));
        return Made(edits);

        static string Name(string team) => team.Replace(" (ENG)", "", StringComparison.Ordinal);
    }

    /// <summary>A year drawn from a seed: 12 to 53 weeks, matches weekly with some midweek ones, key matches, a break, exams, practices entered now and then.</summary>
    public static Season Drawn(int seed)
    {
        var random = new Random(seed);
        var weeks = random.Next(12, 54);
        var first = new DateOnly(2027, 7, 5);
        var preparation = random.Next(0, Math.Min(14, weeks - 4));
        List<SeasonEdit> edits = [Start(random.Next(4) == 0 ? first.AddDays(random.Next(1, 7)) : first, weeks)];
        var breakAt = random.Next(preparation + 3, weeks + 6);
        var breakLength = random.Next(1, 6);
        var examsAt = random.Next(2, weeks + 10);
        for (var week = 1; week < weeks - random.Next(0, 4); week++)
        {
            var monday = first.AddDays(7 * week);
            if (week >= breakAt && week < breakAt + breakLength)
            {
                edits.Add(Event(EventKind.Holiday, new(monday, monday.AddDays(6)), 0));
                continue;
            }
            if (week >= examsAt && week < examsAt + 2) edits.Add(Event(EventKind.Exams, new(monday, monday.AddDays(6)), random.Next(40, 80)));
            if (week < preparation)
            {
                if (random.Next(3) == 0) edits.Add(Match(monday.AddDays(5), Importance.Friendly, "f"));
                continue;
            }
            var importance = random.Next(12) == 0 ? Importance.Key : Importance.Regular;
            if (random.Next(6) > 0) edits.Add(Match(monday.AddDays(random.Next(4, 7)), importance, "m"));
            if (random.Next(4) == 0) edits.Add(Match(monday.AddDays(random.Next(1, 3)), importance, "m"));
            if (random.Next(15) == 0) edits.Add(Match(monday.AddDays(3), Importance.Regular, "m"));
        }
        if (random.Next(4) == 0) edits.Add(new SetPractices(new("w1"), new($"w{weeks}"), new Practices(random.Next(2, 5))));
        return Made(edits);
    }

    public static Season Made(IEnumerable<SeasonEdit> edits) => Plans.After(Season.Empty(new("s")), edits);

    public static StartSeason Start(DateOnly first, int weeks) => new(first, DayOfWeek.Monday, Enumerable.Range(1, weeks).Select(number => new WeekId($"w{number}")).ToValueList(), new TeamCard("Harbour Vale"));

    public static SetMatch Match(DateOnly day, Importance importance, string list) => new(new Match(new($"{list}{day.DayNumber}"), day, Importance: importance));

    public static SetEvent Event(EventKind kind, DaySpan days, int training) => new(new Event(new($"{kind}{days.First.DayNumber}"), kind, "Event", days, Training: new Percent(training)));
}
