using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>Plans that hold for every season, and seasons that ask for the impossible.</summary>
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
        var tapers = weeks.Where(week => week.Kind == WeekKind.Taper && week.Variant is Variant.Short or Variant.FullSecond).ToList();
        Assert.True(tapers.Count <= 3);
        Assert.All(tapers.Zip(tapers.Skip(1)), pair => Assert.True(pair.Second.Index - pair.First.Index >= 5));
    }

    private static PhaseKind Plain(PhaseKind phase) => phase == PhaseKind.Peak ? PhaseKind.Competition : phase;

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

    /// <summary>Whatever is asked for of weeks and whatever stands, there is a plan or one that breaks least.</summary>
    [Fact]
    public void Drawn_wishes_have_an_answer()
    {
        var first = Seasons.Given("SEED", 1000);
        output.WriteLine($"seeds from {first}");
        for (var seed = first; seed < first + Seasons.Given("COUNT", 6); seed++)
        {
            var random = new Random(seed);
            var season = Seasons.Drawn(seed);
            WeekWish Wish() => new(season.Weeks[random.Next(season.Weeks.Length)].Id,
                random.Next(3) == 0 ? (PhaseKind)random.Next(6) : null,
                random.Next(3) == 0 ? (WeekKind)random.Next(11) : null,
                random.Next(3) == 0 ? new Load(random.Next(6000)) : null);
            var wishes = new Wishes
            {
                Weeks = Enumerable.Range(0, random.Next(1, 5)).Select(_ => Wish()).ToValueList(),
                Kept = Enumerable.Range(0, random.Next(0, 5)).Select(_ => Wish()).ToValueList(),
                From = random.Next(2) == 0 ? season.Weeks[random.Next(season.Weeks.Length)].Days.First : null,
            };
            var problem = Problem.Of(season, Seasons.Team, wishes);
            var structure = Structures.LeastBroken(problem);
            Assert.True(structure is not null, $"seed {seed}");
            var clash = Clashes.Of(problem);
            Assert.Equal(structure.Broken.Count == 0, clash is null);
            if (clash is not null) BreaksLeast(problem, clash);
            // Every wish holds or is told as broken.
            foreach (var week in structure.Weeks.Where(week => week.Index >= problem.FirstOpen && problem.Weeks[week.Index].Lock is not null))
            {
                var locked = problem.Weeks[week.Index].Lock!;
                bool IsBroken(Condition condition) => structure.Broken.Any(breach => breach.Week == week.Index && breach.Condition == condition);
                Assert.True(locked.Points is not { } points || points == week.Points || IsBroken(Condition.LockedLoad), $"seed {seed}, week {week.Index + 1}");
                Assert.True(locked.Kind is not { } kind || kind == week.Kind || IsBroken(Condition.LockedKind), $"seed {seed}, week {week.Index + 1}");
                Assert.True(locked.Phase is not { } phase || phase == Plain(week.Phase) || IsBroken(Condition.LockedPhase), $"seed {seed}, week {week.Index + 1}");
            }
        }
    }

    /// <summary>What need not be broken is not: the search that would pay finds the plan of the one that refuses.</summary>
    [Theory]
    [InlineData("-x3 -/6x4 -x2 -/6!")]
    [InlineData("-/3/6x9")]
    public void Nothing_is_paid_for_where_nothing_must_be(string season)
    {
        var problem = Problem.Of(Plans.Of(season), Seasons.Team, new Wishes());
        var paid = Structures.Read(problem, Relaxed.None, new StructureSearch(problem, Relaxed.None, long.MaxValue).Best(default)!);
        Assert.Equal(Shown.Of(problem, Structures.Best(problem)!), Shown.Of(problem, paid));
    }

    /// <summary>Clashes of the written model: what breaks least is little, and names what collides.</summary>
    [Theory]
    // A load of 110 in the fourth week: the ramp gives way.
    [InlineData("-x8 -/6x10", "4=110", "ramp")]
    // The same off the grid of loads, where the week before is fixed too: the ramp gives way, not the load.
    [InlineData("-x8 -/6x10", "3=70 4=98", "ramp")]
    // Half as much again as fits: the load gives way where the week before the match is a taper.
    [InlineData("-x6 -/6x6 -/6! -/6", "13=90", "locked-load taper taper-size")]
    // Building for five weeks.
    [InlineData("-x10 -/6x6", "3=B 4=B 5=B 6=B 7=B", "run-limit")]
    // General preparation in the seventh of eight weeks.
    [InlineData("-x8 -/6x8", "7=GP", "longest-general shortest-specific shortest-pre-competition locked-phase")]
    [InlineData("-x5 -/6x8", "1=GP 2=GP 3=GP 4=GP 5=GP", "shortest-pre-competition shortest-specific longest-general locked-phase")]
    public void A_clash_breaks_little(string season, string wishes, string mayBreak)
    {
        var problem = Clashing(season, wishes);
        Assert.Null(Structures.Best(problem));
        var clash = Clashes.Of(problem)!;
        output.WriteLine(string.Join(", ", clash.Colliding.Select(one => $"{one.Condition.Name} {one.Week + 1}")));
        output.WriteLine(Shown.Of(problem, clash.LeastBroken));
        Assert.NotEmpty(clash.LeastBroken.Broken);
        Assert.True(clash.LeastBroken.Broken.Count <= 3);
        Assert.All(clash.LeastBroken.Broken, breach => Assert.Contains(breach.Condition.Name, mayBreak.Split(' '), StringComparer.Ordinal));
        // Smallest: they alone leave no plan, and without any one of them there is one.
        var others = Clashes.Candidates(problem).Except(clash.Colliding).Aggregate(Relaxed.None, (relaxed, one) => relaxed.With(one.Condition, one.Week));
        Assert.Contains(clash.Colliding, one => one.Condition.IsLock);
        Assert.Null(Structures.Best(problem, others));
        Assert.All(clash.Colliding, one => Assert.NotNull(Structures.Best(problem, others.With(one.Condition, one.Week))));
        BreaksLeast(problem, clash);
    }

    /// <summary>No plan that leaves out one or more of what collides and pays for what it then breaks is better than the one that breaks least.</summary>
    private static void BreaksLeast(Problem problem, Clash clash)
    {
        for (var left = 1; left < 1 << Math.Min(4, clash.Colliding.Count); left++)
        {
            var relaxed = clash.Colliding.Where((_, at) => (left & 1 << at) > 0).Aggregate(Relaxed.None, (now, one) => now.With(one.Condition, one.Week));
            if (new StructureSearch(problem, relaxed, budget: 0).Best(default) is not { } path) continue;
            // Where fewer conditions leave no step of the grid, a load off it stands in, which the whole search does not look at.
            if (path.Steps.Any(step => step.Points % 3 != 0 && step.Move.Kind is WeekKind.Building or WeekKind.Competition or WeekKind.Overload or WeekKind.Introductory or WeekKind.ReEntry)) continue;
            var paid = Structures.Read(problem, Relaxed.None, path).Broken.Sum(breach => 100_000_000L * breach.Condition.Weight * (100 + breach.Beyond) / 100);
            Assert.True(paid > 0 && path.Value - paid <= clash.LeastBroken.Value, $"{path.Value - paid} is better than {clash.LeastBroken.Value}");
        }
    }

    private static Problem Clashing(string season, string wishes)
    {
        var points = new Points(Seasons.Team.ReferenceWeek);
        var said = wishes.Split(' ').Select(wish => wish.Split('=')).Select(wish => wish[1] switch
        {
            "B" => new WeekWish(new($"w{wish[0]}"), Kind: WeekKind.Building),
            "GP" => new WeekWish(new($"w{wish[0]}"), Phase: PhaseKind.GeneralPreparation),
            _ => new WeekWish(new($"w{wish[0]}"), Load: points.ToLoad(int.Parse(wish[1], System.Globalization.CultureInfo.InvariantCulture))),
        });
        return Problem.Of(Plans.Of(season), Seasons.Team, new Wishes { Weeks = said.ToValueList() });
    }

    [Fact]
    public void A_season_with_a_plan_has_no_clash() => Assert.Null(Clashes.Of(Problem.Of(Plans.Of("-x6 -/6x6"), Seasons.Team, new Wishes())));

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
    public void What_stands_is_kept_where_nothing_has_changed()
    {
        var season = Seasons.Of("2024-25_en.1", "Everton FC", 6);
        var problem = Problem.Of(season, Seasons.Team, new Wishes());
        // What stands has a week off the grid.
        var stands = Structures.Best(problem)!.Weeks.Select(week => new WeekWish(problem.Weeks[week.Index].Id, week.Phase, week.Kind, problem.Points.ToLoad(week.Points + (week.Index == 12 ? 2 : 0)))).ToValueList();
        var again = Structures.Best(Problem.Of(season, Seasons.Team, new Wishes { Kept = stands, KeepWeight = 10_000 }))!;
        Assert.Equal(stands.Select(week => week.Kind), again.Weeks.Select(week => (WeekKind?)week.Kind));
        Assert.Equal(stands.Select(week => problem.Points.Of(week.Load!.Value)), again.Weeks.Select(week => week.Points));
        // A match moved from one week to another changes what is near it.
        var free = Structures.Best(Problem.Of(season, Seasons.Team, new Wishes { Kept = stands, KeepWeight = 0 }))!;
        Assert.Equal(Structures.Best(problem)!.Weeks, free.Weeks);
    }

    [Fact]
    public void Past_weeks_stay_whatever_they_are()
    {
        // Weeks that no rule would have: overload at once, four loading weeks, a leap.
        var season = Plans.Of("SP: O90 B40 B100 GP: B130 -x4 -/6x8");
        var wishes = new Wishes { From = Plans.Monday.AddDays(28) };
        var problem = Problem.Of(season, Plans.Team(), wishes);
        Assert.Equal(4, problem.FirstOpen);
        var structure = Structures.Best(problem)!;
        Assert.Equal([90, 40, 100, 130], structure.Weeks.Take(4).Select(week => week.Points));
        Assert.Equal([WeekKind.Overload, WeekKind.Building, WeekKind.Building, WeekKind.Building], structure.Weeks.Take(4).Select(week => week.Kind));
        Assert.Equal([PhaseKind.SpecificPreparation, PhaseKind.SpecificPreparation, PhaseKind.SpecificPreparation, PhaseKind.GeneralPreparation], structure.Weeks.Take(4).Select(week => week.Phase));
        Assert.Empty(structure.Broken);
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
