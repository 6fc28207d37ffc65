using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Streams;

/// <summary>Two windows on one season: the second hand moved before it saw what the first one did.</summary>
public class ConflictTests
{
    [Fact]
    public async Task An_edit_of_an_older_state_goes_through_when_nobody_touched_its_places()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var late = Desk.Gesture(open, Desk.Load(5, 2000));
        await open.Stream.ApplyAsync(desk.Tove, Desk.Gesture(open, Desk.Load(4, 1000)));
        Assert.Equal(new Kept(3), await open.Stream.ApplyAsync(desk.Runa, late));
        Assert.Equal((1000, 2000), (Desk.Au(open, 4), Desk.Au(open, 5)));
    }

    public static TheoryData<string, Edit, Edit> Clashes => new()
    {
        // The same place.
        { "changed-meanwhile", Desk.Load(4, 1000), Desk.Load(4, 2000) },
        // One place of many.
        { "changed-meanwhile", new PaintPhase(Desk.Weeks[5], Desk.Weeks[6], new("p1"), PhaseKind.Peak, new("p2")), new PaintPhase(Desk.Weeks[0], Desk.Weeks[5], new("q1"), PhaseKind.GeneralPreparation, new("q2")) },
        // A place it only reads: week 8 was locked, and now it is not.
        { "changed-meanwhile", new LockWeeks(Desk.Weeks[7], Desk.Weeks[7], false), Desk.Load(8, 2000) },
        // What no longer holds is refused for its own reason.
        { "week-locked", new LockWeeks(Desk.Weeks[3], Desk.Weeks[5], true), Desk.Load(4, 2000) },
        { "match-unknown", new RemoveMatch(new("m1")), new MoveMatch(new("m1"), new(2027, 8, 2)) },
    };

    [Theory, MemberData(nameof(Clashes))]
    public async Task Refused_otherwise(string reason, Edit first, Edit second)
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new SetMatch(new Match(new("m1"), new(2027, 8, 1), Opponent: "Turnes")), new LockWeeks(Desk.Weeks[7], Desk.Weeks[7], true)));
        var late = Desk.Gesture(open, new SetGoal(new Goal(new("g1"), 1, "Jump, cm")), second);
        Assert.IsType<Kept>(await open.Stream.ApplyAsync(desk.Tove, Desk.Gesture(open, first)));
        var now = open.Season;
        Assert.Equal(reason, Assert.Single(Assert.IsType<NotDone>(await open.Stream.ApplyAsync(desk.Runa, late)).Reasons).Id);
        Assert.Same(now, open.Season);
    }

    [Fact]
    public async Task The_refusal_names_who_changed_what_last()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var late = Desk.Gesture(open, Desk.Load(4, 2000));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(4, 1000)));
        await open.Stream.ApplyAsync(desk.Tove, Desk.Gesture(open, Desk.Load(4, 1700)));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(6, 900)));
        var refusal = Assert.Single(Assert.IsType<NotDone>(await open.Stream.ApplyAsync(desk.Runa, late)).Reasons);
        Assert.Equal(("changed-meanwhile", "week.load/w4"), (refusal.Id, refusal.Subject));
        Assert.Contains("Tove Marrin", refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains("week 4", refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains(Desk.PercentOf(open, 1700), refusal.Sentence, StringComparison.Ordinal);
        Assert.IsType<Kept>(await open.Stream.ApplyAsync(desk.Runa, late with { BasedOn = open.Stream.State.Number }));
    }

    [Fact]
    public async Task A_change_taken_back_meanwhile_is_told_as_such()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.Stream.ApplyAsync(desk.Tove, Desk.Gesture(open, Desk.Load(4, 1700)));
        var late = Desk.Gesture(open, Desk.Load(4, 2000));
        await open.Stream.UndoAsync(desk.Tove, Guid.NewGuid());
        var refusal = Assert.Single(Assert.IsType<NotDone>(await open.Stream.ApplyAsync(desk.Runa, late)).Reasons);
        Assert.Contains("Undid: ", refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains(Desk.PercentOf(open, 1700), refusal.Sentence, StringComparison.Ordinal);
    }
}
