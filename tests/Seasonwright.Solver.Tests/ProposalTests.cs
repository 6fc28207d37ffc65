using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// Whole proposals, judged by the rulebook, which shares no code with the engine: no unforced finding above a caution, three cautions
/// at most. A small dose of what ./prove propose runs over hundreds of seasons: SEED begins elsewhere, COUNT takes more.
/// </summary>
public class ProposalTests(ITestOutputHelper output)
{
    private const int Drawn = 12, MostCautions = 3;

    [Theory]
    [MemberData(nameof(StructureTests.Leagues), MemberType = typeof(StructureTests))]
    public void Real_leagues_have_plans_that_the_rulebook_has_little_against(string list, string club, int weeks, string? cup, bool exams, StartLevel start) =>
        League(output, list, club, weeks, cup, exams, start);

    private static Season League(ITestOutputHelper output, string list, string club, int weeks, string? cup, bool exams, StartLevel start) =>
        JudgedOnce(output, club, Seasons.Of(list, club, weeks, cup, exams), start, new Wishes());

    /// <summary>The plans of the real leagues.</summary>
    internal static IEnumerable<(string Name, Season Season, Setup Team)> Planned(ITestOutputHelper output) => StructureTests.Leagues.Select(row => row.Data)
        .Select(row => (row.Item2, League(output, row.Item1, row.Item2, row.Item3, row.Item4, row.Item5, row.Item6), Seasons.Coming(row.Item6)));

    [Fact]
    public void Drawn_seasons_have_plans_that_the_rulebook_has_little_against()
    {
        var (first, count) = (Seasons.Given("SEED", 1000), Seasons.Given("COUNT", Drawn));
        output.WriteLine($"seeds from {first}");
        for (var seed = first; seed < first + count; seed++) Judged(output, $"seed {seed}", Seasons.Drawn(seed), (StartLevel)(seed % 3), new Wishes());
    }

    /// <summary>A week back was bent by a point for two weeks that entered practices fill by themselves.</summary>
    [Fact]
    public void No_week_is_bent_for_one_that_practices_fill() => Judged(output, "seed 162", Seasons.Drawn(162), (StartLevel)(162 % 3), new Wishes());

    /// <summary>Clubs that nobody looked at while the engine was made. CLUBS takes more of them: ./prove propose takes all.</summary>
    [Fact]
    public void Other_clubs_have_plans_that_the_rulebook_has_little_against()
    {
        var clubs = Others.ToList();
        // Every club has a preparation of its own, from the list itself: 3 to 8 weeks, each start, now and then exams.
        foreach (var (at, (list, club, cup)) in clubs.Index().Take(Seasons.Given("CLUBS", 2)))
            Judged(output, club, Seasons.Of(list, club, 3 + at % 6, cup, exams: at % 5 == 4), (StartLevel)(at % 3), new Wishes());
    }

    private static IEnumerable<(string List, string Club, string? Cup)> Others =>
    [
        .. new[] { "Newcastle United FC", "AFC Bournemouth", "Chelsea FC", "Crystal Palace FC", "Ipswich Town FC", "Leicester City FC", "Manchester United FC", "Nottingham Forest FC", "Southampton FC", "Tottenham Hotspur FC", "West Ham United FC", "Wolverhampton Wanderers FC" }.Select(club => ("2024-25_en.1", club, (string?)null)),
        ("2024-25_en.1", "Arsenal FC", "2024-25_uefa.cl"),
        ("2024-25_en.1", "Aston Villa FC", "2024-25_uefa.cl"),
        .. new[] { "1. FC Heidenheim 1846", "1. FC Köln", "1. FC Union Berlin", "1. FSV Mainz 05", "Borussia Dortmund", "Borussia Mönchengladbach", "Eintracht Frankfurt", "FC Augsburg", "FC Bayern München", "SV Darmstadt 98", "SV Werder Bremen", "TSG 1899 Hoffenheim", "VfB Stuttgart", "VfL Wolfsburg" }.Select(club => ("2023-24_de.1", club, (string?)null)),
    ];

    /// <summary>Plans that more than one test looks at are made once.</summary>
    private static readonly ConcurrentDictionary<string, Lazy<Season>> Once = new(StringComparer.Ordinal);

    /// <inheritdoc cref="Judged"/>
    /// <param name="name">Tells it from all others.</param>
    internal static Season JudgedOnce(ITestOutputHelper output, string name, Season season, StartLevel start, Wishes wishes) =>
        Once.GetOrAdd(name, _ => new(() => Judged(output, name, season, start, wishes))).Value;

    /// <returns>The season with the plan in it.</returns>
    internal static Season Judged(ITestOutputHelper output, string name, Season season, StartLevel start, Wishes wishes)
    {
        var team = Seasons.Coming(start);
        var problem = Problem.Of(season, team, wishes);
        var watch = Stopwatch.StartNew();
        var structure = Structures.LeastBroken(problem)!;
        var a = watch.ElapsedMilliseconds;
        var loads = LoadPlans.Best(problem, structure);
        var c = watch.ElapsedMilliseconds - a;
        var emphasis = EmphasisPlans.Best(problem, structure, loads);
        var b = watch.ElapsedMilliseconds - a - c;
        var planned = Plans.After(season, ProposedEdits.Of(season, team, problem, structure, loads, emphasis, _ => true, (kind, key) => $"{kind}-{key}"));
        var findings = Rulebook.Check(planned, team).Findings.Where(finding => !finding.IsForced).ToList();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: A {a} ms, C {c} ms gap {loads.Gap:P3} {loads.IsProven}, B {b} ms {emphasis.IsProven}; broken {structure.Broken.Count}, short {string.Join(' ', loads.Short.Select(one => $"{one.Condition.Name}@{one.Week + 1}:{one.Beyond / 10}"))} {string.Join(' ', emphasis.Short.Select(one => $"{one.Condition.Name}@{one.Week + 1}:{one.Beyond}"))}"));
        if (Seasons.Given("MEASURE", 0) == 1) Measures.Of(output, name, season, team, wishes, problem, structure, loads, planned);
        foreach (var finding in findings) output.WriteLine($"   {finding.Severity} {finding.Rule.Id} {finding.Place.Weeks}: {finding.Sentence}");
        Assert.Empty(structure.Broken);
        LooksSound(problem, structure, loads, name);
        Assert.All(emphasis.Tests, day => Assert.False(season.Matches.Any(match => match.Day == day) || season.Events.Any(item => item is { Training.Value: 0, For: null, Part: null } && item.Days.Contains(day)), $"A test on {day}, a match day or a day off"));
        var isEntered = problem.Weeks.Any(week => week.PracticePoints is not null);
        // Practices that are entered are a fact and may alone go beyond a limit of loads: then nothing of ours comes on top, or no loads keep to it at all.
        if (isEntered) findings.RemoveAll(finding => loads.Short.Any(one => one.Condition.Rule == finding.Rule.Id && one.Week + 1 >= finding.Place.First && one.Week < finding.Place.Last && (one.IsForced || OnlyFacts(one.Week))));
        // A full taper falls towards the match, but where two matches before it leave hardly any training at all.
        else Assert.All(structure.Weeks.Where(week => week.Variant == Variant.FullLast && problem.Weeks[week.Index - 1].Matches.Count < 2), week => Assert.True(Training(week.Index) < Training(week.Index - 1), name));
        if (findings.Count > 0) output.WriteLine(Shown.Of(problem, structure with { Weeks = structure.Weeks.Select(week => week with { Points = loads.Points[week.Index] }).ToValueList() }));
        Assert.DoesNotContain(findings, finding => finding.Severity > Severity.Caution);
        Assert.InRange(findings.Count, 0, MostCautions);
        Assert.True(loads.Gap < 0.01 && emphasis.IsProven, $"{name}: {loads.Gap}");
        return planned;

        bool OnlyFacts(int week) => Training(week) <= (problem.Weeks[week].PracticePoints ?? 0);

        int Training(int week) => loads.Points[week] - problem.Weeks[week].MatchPoints;
    }

    /// <summary>What a coach would not draw, whatever no rule says of it. Common practice, no source.</summary>
    private static void LooksSound(Problem problem, Structure structure, LoadPlan loads, string name)
    {
        var run = 0;
        foreach (var week in structure.Weeks)
        {
            // Weeks of two matches tire: after six of them and of loading weeks one with a single match is an easier one.
            run = week is { Kind: WeekKind.Competition or WeekKind.Building or WeekKind.Congested, Phase: PhaseKind.Competition or PhaseKind.Peak } ? run + 1 : week.Kind == WeekKind.Reduced ? run : 0;
            Assert.False(run > 6 && week.Kind != WeekKind.Congested, $"{name}: {run} weeks without an easier one up to week {week.Index + 1}");
            if (week.Index == 0) continue;
            var before = structure.Weeks[week.Index - 1];
            // Back from days off load does not fall again.
            if (before.Kind == WeekKind.ReEntry && problem.Weeks[before.Index].Matches.Count < 2 && week.Kind is WeekKind.Building or WeekKind.Competition && !loads.Short.Any(one => one.Condition == Condition.RisingBack))
                Assert.True(loads.Points[week.Index] >= loads.Points[before.Index], $"{name}: week {week.Index + 1} falls after the week back");
        }
    }
}
