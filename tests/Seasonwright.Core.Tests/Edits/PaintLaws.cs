using CsCheck;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

public class PaintLaws
{
    private static readonly Gen<SeasonEdit> Painting = Gen.OneOf(
        AnyEdit.OfSeason[nameof(PaintPhase)], AnyEdit.OfSeason[nameof(ErasePhase)], AnyEdit.OfSeason[nameof(PaintBlock)], AnyEdit.OfSeason[nameof(EraseBlock)],
        AnyEdit.OfSeason[nameof(SetWeekKind)], AnyEdit.OfSeason[nameof(SetWeekLoad)], AnyEdit.OfSeason[nameof(SetEmphasis)]);

    /// <summary>A season of painted weeks, some of them locked.</summary>
    private static readonly Gen<Season> Painted = Gen.Select(Painting.Array[5, 30], Any.WeekSpans, (edits, locked) =>
        History.Of([Start(16), .. edits, new LockWeeks(locked.First, locked.Last, true)]).Season);

    private static StartSeason Start(int weeks) =>
        new(new(2027, 7, 5), DayOfWeek.Monday, Enumerable.Range(1, weeks).Select(n => new WeekId($"w{n}")).ToValueList(), new("Harbour Vale"));

    /// <summary>What a lock keeps, in values: an id may change where a run is cut in two, what it says may not.</summary>
    private static string Kept(Season season, WeekId week)
    {
        var phase = season.Facts.FindValue(SeasonFacets.WeekPhase, week) is { } p ? season.Facts.Find(SeasonFacets.Phase, p) : null;
        var block = season.Facts.FindValue(SeasonFacets.WeekBlock, week) is { } b ? season.Facts.Find(SeasonFacets.Block, b) : null;
        var emphasis = season.Facts.All(SeasonFacets.WeekEmphasis).Where(fact => fact.Subject.First == week).Select(fact => $"{fact.Subject.Second} {fact.Value}");
        return $"{phase} {block} {season.KindOf(week)} {season.TargetOf(week)} {string.Join(", ", emphasis)}";
    }

    [Fact]
    public void A_locked_week_keeps_what_it_has_whatever_is_painted()
    {
        var accepted = 0;
        Gen.Select(Painted, Painting).Sample((season, edit) =>
        {
            if (Decider.Decide(season, edit) is not Accepted { Step: var step }) return;
            Interlocked.Increment(ref accepted);
            var after = season.With(step);
            Assert.All(season.Weeks.Where(week => season.IsLocked(week.Id)), week => Assert.Equal(Kept(season, week.Id), Kept(after, week.Id)));
        }, iter: 1_000);
        Assert.True(accepted > 0);
    }

    [Fact]
    public void Paint_covers_its_weeks_and_leaves_the_others_as_they_were() => Gen.Select(Painted, AnyEdit.OfSeason[nameof(PaintPhase)]).Sample((season, edit) =>
    {
        if (Decider.Decide(season, edit) is not Accepted { Step: var step }) return;
        var paint = (PaintPhase)edit;
        var after = season.With(step);
        var (from, to) = (season.Week(paint.First)!.Number, season.Week(paint.Last)!.Number);
        foreach (var week in after.Weeks)
        {
            var (was, now) = (season.PhaseOf(season.Week(week.Id)!), after.PhaseOf(week));
            if (week.Number >= from && week.Number <= to) Assert.Equal((paint.Phase, paint.Kind), (now!.Id, now.Phase.Kind));
            else if (was?.Id != paint.Phase) Assert.Equal(was?.Phase, now?.Phase);
        }
        Whole.CheckRuns(after);
    }, iter: 1_000);

    [Fact]
    public void A_run_that_is_cut_in_two_goes_on_under_the_new_id()
    {
        var season = History.After(Start(10),
            new PaintPhase(new("w1"), new("w8"), new("p"), PhaseKind.GeneralPreparation, new("x")),
            new PaintPhase(new("w3"), new("w4"), new("q"), PhaseKind.PreCompetition, new("rest"), "Camp"));
        Assert.Equal("p 1-2, q 3-4, rest 5-8", Runs(season));
        Assert.Equal(PhaseKind.GeneralPreparation, season.Phases[2].Phase.Kind);
        Assert.Equal("Camp", season.Phases[1].Phase.Name);

        var refused = Assert.IsType<Refused>(Decider.Decide(season, new ErasePhase(new("w6"), new("w6"), new("q"))));
        Assert.Equal(("rest-taken", "phase/q"), (refused.Reasons.Single().Id, refused.Reasons.Single().Subject));
        Assert.Equal("p 1-2, q 3-4", Runs(History.After(season, new ErasePhase(new("w5"), new("w10"), new("none")))));
    }

    /// <summary>A past bug: the part outside was left behind under the old id, so the phase came back in two pieces.</summary>
    [Fact]
    public void A_run_that_reaches_outside_the_season_is_cut_there_too()
    {
        var season = History.After(Start(10),
            new PaintPhase(new("w5"), new("w10"), new("p"), PhaseKind.Competition, new("x")),
            new Resize(8, ValueList<WeekId>.Empty),
            new PaintPhase(new("w7"), new("w8"), new("q"), PhaseKind.Transition, new("rest")),
            new Resize(10, ValueList<WeekId>.Empty));
        Assert.Equal("p 5-6, q 7-8, rest 9-10", Runs(season));
    }

    /// <summary>A past bug: painting with an id that lay elsewhere broke its phase in two.</summary>
    [Fact]
    public void A_run_is_extended_only_beside_itself()
    {
        var season = History.After(Start(10), new PaintBlock(new("w1"), new("w2"), new("b"), BlockKind.Base, new("x")));
        var refused = Assert.IsType<Refused>(Decider.Decide(season, new PaintBlock(new("w4"), new("w5"), new("b"), BlockKind.Base, new("x"))));
        Assert.Equal(("run-apart", "block/b"), (refused.Reasons.Single().Id, refused.Reasons.Single().Subject));
        var extended = History.After(season, new PaintBlock(new("w3"), new("w5"), new("b"), BlockKind.Build, new("x")));
        Assert.Equal((BlockKind.Build, 1, 5), (extended.Blocks.Single().Block.Kind, extended.Blocks.Single().First.Number, extended.Blocks.Single().Last.Number));
    }

    /// <summary>A past bug: recasting a phase from an open week changed the locked weeks of the same phase.</summary>
    [Fact]
    public void A_locked_week_holds_its_run_to_what_it_is()
    {
        var season = History.After(Start(10),
            new PaintPhase(new("w1"), new("w4"), new("p"), PhaseKind.GeneralPreparation, new("x")),
            new LockWeeks(new("w2"), new("w2"), true));
        var refused = Assert.IsType<Refused>(Decider.Decide(season, new PaintPhase(new("w5"), new("w6"), new("p"), PhaseKind.Peak, new("x"))));
        Assert.Equal(("week-locked", "week/w2"), (refused.Reasons.Single().Id, refused.Reasons.Single().Subject));
        Assert.Equal("p 1-6", Runs(History.After(season, new PaintPhase(new("w5"), new("w6"), new("p"), PhaseKind.GeneralPreparation, new("x")))));
    }

    [Fact]
    public void The_pattern_of_a_block_counts_its_weeks()
    {
        var season = History.After(Start(4),
            new PaintBlock(new("w1"), new("w4"), new("b"), BlockKind.Base, new("x")),
            new SetWeekKind(new("w1"), new("w2"), WeekKind.Building),
            new SetWeekKind(new("w3"), new("w3"), WeekKind.Overload),
            new SetWeekKind(new("w4"), new("w4"), WeekKind.Unloading));
        Assert.Equal("3:1", season.Blocks.Single().Pattern);
        Assert.Equal("", History.After(season, new SetWeekKind(new("w4"), new("w4"), null)).Blocks.Single().Pattern);
    }

    private static string Runs(Season season) => string.Join(", ", season.Phases.Select(run => run.First == run.Last ? $"{run.Id} {run.First.Number}" : $"{run.Id} {run.First.Number}-{run.Last.Number}"));
}
