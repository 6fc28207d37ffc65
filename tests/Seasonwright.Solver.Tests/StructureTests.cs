using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>What holds of the structure of every season.</summary>
public class StructureTests(ITestOutputHelper output)
{
    private const int Drawn = 60;

    public static TheoryData<string, string, int, string?, bool, StartLevel> Leagues => new()
    {
        { "2024-25_en.1", "Everton FC", 6, null, false, StartLevel.Home },
        { "2024-25_en.1", "Brighton & Hove Albion FC", 5, null, false, StartLevel.Kept },
        { "2024-25_en.1", "Brentford FC", 7, null, true, StartLevel.Off },
        { "2024-25_en.1", "Fulham FC", 4, null, false, StartLevel.Home },
        { "2024-25_en.1", "Newcastle United FC", 6, null, true, StartLevel.Home },
        { "2024-25_en.1", "Liverpool FC", 6, "2024-25_uefa.cl", false, StartLevel.Home },
        { "2024-25_en.1", "Arsenal FC", 6, "2024-25_uefa.cl", false, StartLevel.Home },
        { "2024-25_en.1", "Manchester City FC", 5, "2024-25_uefa.cl", false, StartLevel.Home },
        { "2024-25_en.1", "Aston Villa FC", 6, "2024-25_uefa.cl", false, StartLevel.Kept },
        { "2023-24_de.1", "SC Freiburg", 6, null, false, StartLevel.Home },
        { "2023-24_de.1", "1. FC Heidenheim 1846", 7, null, false, StartLevel.Off },
        { "2023-24_de.1", "Bayer 04 Leverkusen", 6, null, false, StartLevel.Kept },
        { "2023-24_de.1", "VfL Bochum 1848", 5, null, true, StartLevel.Home },
        { "2023-24_de.1", "RB Leipzig", 8, null, false, StartLevel.Home },
    };

    [Theory]
    [MemberData(nameof(Leagues))]
    public void Real_leagues_have_sound_plans(string list, string club, int weeks, string? cup, bool exams, StartLevel start)
    {
        var problem = Problem.Of(Seasons.Of(list, club, weeks, cup, exams), Seasons.Team, new Wishes { Start = start });
        Assert.Equal(38 - (list.EndsWith("de.1", StringComparison.Ordinal) ? 4 : 0), problem.Weeks.Sum(week => week.Matches.Count(match => match.Id.Text[0] == 'l')));
        Sound(problem, Structures.Best(problem));
    }

    [Fact]
    public void Drawn_seasons_have_sound_plans()
    {
        var first = Seasons.Given("SEED", 1);
        output.WriteLine($"seeds from {first}");
        for (var seed = first; seed < first + Drawn; seed++)
        {
            var wishes = new Wishes { Start = (StartLevel)(seed % 3), Boldness = (Boldness)(seed / 3 % 3) };
            var problem = Problem.Of(Seasons.Drawn(seed), Seasons.Team, wishes);
            try
            {
                Sound(problem, Structures.Best(problem));
            }
            catch (Exception)
            {
                output.WriteLine($"seed {seed}");
                throw;
            }
        }
    }

    /// <summary>What holds of every plan, read off the weeks alone. Levels lie on steps of three points and may pass a limit by 1.6.</summary>
    private void Sound(Problem problem, Structure? structure)
    {
        if (structure is null && Structures.LeastBroken(problem) is { } broken) output.WriteLine(Shown.Of(problem, broken));
        Assert.NotNull(structure);
        try
        {
            Sound(problem, structure.Weeks);
            Assert.Empty(structure.Broken);
        }
        catch (Exception)
        {
            output.WriteLine(Shown.Of(problem, structure));
            throw;
        }
    }

    private static void Sound(Problem problem, ValueList<StructureWeek> weeks)
    {
        Assert.Equal(problem.Weeks.Count, weeks.Count);
        var (run, reached) = (0, 0);
        for (var at = 0; at < weeks.Count; at++)
        {
            var (week, facts, before) = (weeks[at], problem.Weeks[at], at > 0 ? weeks[at - 1] : null);
            var place = $"week {at + 1}";
            // Matches, practice and ours are the week.
            var practice = KindTable.Practice(problem, facts, week.Kind, week.Variant, week.Points - facts.MatchPoints);
            Assert.True(practice >= 0 && week.Points >= facts.MatchPoints + (facts.PracticePoints ?? 0), place);
            Assert.True(week.Points <= Math.Max(120, week.Range.Least), place);
            // Competition is what the calendar says, preparation keeps its order.
            var cycle = problem.Cycles.FirstOrDefault(one => at <= one.Last);
            Assert.Equal(cycle is not null && at >= cycle.First, week.Phase is PhaseKind.Competition or PhaseKind.Peak);
            if (cycle is null) Assert.Equal(PhaseKind.Transition, week.Phase);
            if (cycle is not null && at > cycle.Start && at < cycle.First && before!.Phase != PhaseKind.Transition) Assert.True(week.Phase >= before.Phase && week.Phase != PhaseKind.Transition, place);
            // Kinds by the calendar.
            Assert.Equal(facts.IsBreak, week.Kind == WeekKind.Break);
            if (facts.Matches.Count > 1) Assert.False(week.Kind is WeekKind.Unloading or WeekKind.Building or WeekKind.Overload or WeekKind.Competition, place);
            if (week.Kind == WeekKind.Competition) Assert.Equal(1, facts.OfficialMatches);
            if (week.Kind == WeekKind.Unloading) Assert.True(before!.Kind.IsLoading(), place);
            if (before?.Kind == WeekKind.Overload) Assert.False(week.Kind is WeekKind.Building or WeekKind.Overload or WeekKind.Competition, place);
            // Blocks end with the weeks that end them and hold one phase.
            if (before is not null && before.Block == week.Block) Assert.True(Plain(before.Phase) == Plain(week.Phase) && before.Kind != WeekKind.Unloading && (before.Kind != WeekKind.Break || week.Kind == WeekKind.Break) && !(before.Kind == WeekKind.Taper && week.Kind != WeekKind.Taper), place);
            else if (before is not null) Assert.Equal(before.Block + 1, week.Block);
            // Runs.
            if (week.Kind is WeekKind.Building or WeekKind.Overload or WeekKind.Competition) run++;
            else if (week.Kind is not (WeekKind.Congested or WeekKind.Reduced)) run = 0;
            Assert.True(run <= (week.Phase is PhaseKind.Competition or PhaseKind.Peak ? 6 : 3), place);
            // Loading weeks side by side rise by no more than the ramp; a match-free week between matches does not lower the level.
            if (before is not null && before.Kind is WeekKind.Building or WeekKind.Competition && week.Kind is WeekKind.Building or WeekKind.Competition or WeekKind.Overload && WeeksBack.Of(problem)[at].Since >= 2)
                Assert.True(10 * week.Points <= Math.Max(10 * week.Range.Least, Math.Min(10 * reached + 100, 115 * reached / 10) + 16 + 15), place);
            if (week.Kind is WeekKind.Building or WeekKind.Competition or WeekKind.Overload) reached = week.Kind == WeekKind.Building && Plain(week.Phase) == PhaseKind.Competition ? Math.Max(reached, week.Points) : week.Points;
        }
        // Held over key matches in a row one may last three weeks: what counts is where each begins.
        var tapers = weeks.Where(week => week.Kind == WeekKind.Taper && weeks[week.Index - 1].Kind != WeekKind.Taper).ToList();
        Assert.True(tapers.Count <= 3);
        Assert.All(tapers.Zip(tapers.Skip(1)), pair => Assert.True(pair.Second.Index - pair.First.Index >= 5));
    }

    internal static PhaseKind Plain(PhaseKind phase) => phase == PhaseKind.Peak ? PhaseKind.Competition : phase;

    [Fact]
    public void The_same_season_has_the_same_plan()
    {
        var season = Seasons.Of("2024-25_en.1", "Liverpool FC", 6, "2024-25_uefa.cl");
        var plans = Enumerable.Range(0, 5).Select(_ => Structures.Best(Problem.Of(season, Seasons.Team, new Wishes()))).ToList();
        Assert.NotNull(plans[0]);
        Assert.All(plans, plan => Assert.True(plans[0]!.Equals(plan)));
    }

    /// <summary>A plan or a word that there is none, never an exception: what is priced always has one.</summary>
    [Theory]
    [InlineData("-x12")]
    [InlineData("-")]
    [InlineData("-/6!")]
    [InlineData("-/1!/2/3/4/5/6/7 -")]
    [InlineData("-/1/2/3/4/5/6/7x12")]
    [InlineData("-/3/6x41")]
    [InlineData("-x12 *Holiday,1.1-12.7,0%")]
    [InlineData("-x4 -/6x4 *Holiday,1.1-8.7,0%")]
    [InlineData("-x53")]
    [InlineData("-x29 -/6x8")]
    [InlineData("-x28 -/6x8")]
    [InlineData("-/6x10 -x12 -/6x3 -x5 -/6!")]
    [InlineData("-/6x3 -x7 -/6x3 *Holiday,4.1-10.7,0%")]
    [InlineData("-/1~/3~/6~x20 -/6")]
    public void Strange_seasons_have_a_plan(string season)
    {
        foreach (var start in Enum.GetValues<StartLevel>())
        {
            var problem = Problem.Of(Plans.Of(season), Seasons.Team, new Wishes { Start = start });
            var best = Structures.Best(problem);
            if (best is null) output.WriteLine(season + Environment.NewLine + Shown.Of(problem, Structures.LeastBroken(problem)!));
            Assert.NotNull(best);
            Assert.Equal(problem.Weeks.Count, best.Weeks.Count);
            Assert.Equal(best, Structures.LeastBroken(problem));
        }
    }

    /// <summary>Figures of a team that nobody would enter leave a plan too.</summary>
    [Theory]
    [InlineData(1, 3, 110, 7.5, 120)]
    [InlineData(30_000, 3, 110, 7.5, 120)]
    [InlineData(3_000, 14, 110, 7.5, 120)]
    [InlineData(3_000, 0, 0, 0, 120)]
    [InlineData(3_000, 3, 240, 10, 120)]
    [InlineData(3_000, 3, 110, 7.5, 40)]
    [InlineData(3_000, 3, 110, 7.5, -7)]
    public void Strange_teams_have_a_plan(int reference, int practices, int minutes, double rpe, int largest)
    {
        var usual = UsualWeek.Default;
        SetupEdit[] edits = [new SetReferenceWeek(new Load(reference)), new SetUsualWeek(usual with { Practices = usual.Practices with { Count = practices } }), new SetMatchLoad(new MatchLoad(new Minutes(minutes), new Rpe((decimal)rpe), new Rpe((decimal)rpe)))];
        var team = edits.Aggregate(Seasons.Team, (setup, edit) => setup.With(Assert.IsType<Accepted>(Decider.Decide(setup, edit)).Step));
        foreach (var season in new[] { "-x6 -/6x8 -/3/6x2 -/6!", "-/1/3/5x3 -x6 -/6!" })
            Assert.NotNull(Structures.Best(Problem.Of(Plans.Of(season), team, new Wishes { LargestWeek = largest })));
    }

    [Fact]
    public void The_best_stands_first_among_several_that_differ()
    {
        var problem = Problem.Of(Seasons.Of("2024-25_en.1", "Everton FC", 6), Seasons.Team, new Wishes());
        var several = Structures.Several(problem, 5);
        Assert.Equal(5, several.Count);
        Assert.Equal(Structures.Best(problem), several[0]);
        Assert.Equal(5, several.Select(structure => string.Join(' ', structure.Weeks.Select(week => $"{week.Phase}{week.Kind}{week.Variant}"))).Distinct(StringComparer.Ordinal).Count());
        Assert.All(several.Zip(several.Skip(1)), pair => Assert.True(pair.First.Value >= pair.Second.Value));
        Assert.All(several, structure => Sound(problem, structure));
        var apart = Structures.Several(problem, 3, weeksApart: 4);
        Assert.Equal(3, apart.Count);
        foreach (var (one, other) in apart.SelectMany((one, at) => apart.Skip(at + 1).Select(other => (one, other))))
            Assert.True(one.Weeks.Zip(other.Weeks).Count(pair => (pair.First.Phase, pair.First.Kind, pair.First.Variant) != (pair.Second.Phase, pair.Second.Kind, pair.Second.Variant)) >= 4);
    }

    /// <summary>The value of a plan is what its weeks are worth, found forwards or through a detour: the plan with its own kinds fixed is found again.</summary>
    [Fact]
    public void Every_one_of_several_is_the_best_of_its_kinds()
    {
        var season = Seasons.Of("2023-24_de.1", "SC Freiburg", 6);
        foreach (var structure in Structures.Several(Problem.Of(season, Seasons.Team, new Wishes()), 4))
        {
            var kinds = structure.Weeks.Select(week => new WeekWish(new($"w{week.Index + 1}"), week.Phase, week.Kind)).ToValueList();
            Assert.Equal(structure.Value, Structures.Best(Problem.Of(season, Seasons.Team, new Wishes { Weeks = kinds }))!.Value);
        }
    }

    [Fact]
    public void No_weeks_have_no_plan()
    {
        var problem = Problem.Of(Season.Empty(new("s")), Setup.Empty(new("team")), new Wishes());
        Assert.Null(Structures.Best(problem));
        Assert.Null(Structures.LeastBroken(problem));
    }

    [Fact]
    public void A_cancelled_search_stops() =>
        Assert.ThrowsAny<OperationCanceledException>(() => Structures.Best(Problem.Of(Plans.Of("-x12"), Seasons.Team, new Wishes()), cancel: new CancellationToken(canceled: true)));
}
