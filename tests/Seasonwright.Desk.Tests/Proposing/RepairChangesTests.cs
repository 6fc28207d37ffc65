using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Proposing;

namespace Seasonwright.Desk.Tests.Proposing;

/// <summary>Weeks 1 to 12 are published with the load of a normal hard week each.</summary>
public class RepairChangesTests
{
    private static readonly Setup Team = Setup.Empty(new("t"));

    private static readonly Season Published = Of(Season.Empty(new("s")), new StartSeason(new DateOnly(2027, 7, 5), DayOfWeek.Monday, Desk.Weeks, new TeamCard("Harbour Vale", "2027-28")), Loads(1, 12, 100), Kind(1, 12, WeekKind.Building), new PaintPhase(Desk.Weeks[0], Desk.Weeks[11], new("p"), PhaseKind.GeneralPreparation, new("x")));

    [Fact]
    public void What_was_changed_by_hand_is_told_whether_it_is_left_or_not()
    {
        var now = Of(Published, Loads(3, 4, 71), Loads(6, 6, 60), Kind(8, 8, WeekKind.Unloading));
        // Week 3 goes back to what was published, week 4 to something else; of week 6 the kind alone changes, of week 8 all.
        var then = Of(now, Loads(3, 3, 100), Loads(4, 4, 80), Kind(6, 6, WeekKind.Overload), Kind(8, 8, WeekKind.Building), Loads(8, 8, 90));
        Assert.Equal(
            [
                "Undone: Week 3, Mon 19 Jul 2027 to Sun 25 Jul 2027: load 100 % (you had set 71 %)",
                "Undone: Week 4, Mon 26 Jul 2027 to Sun 1 Aug 2027: load 80 % (you had set 71 %)",
                "Undone: Week 8, Mon 23 Aug 2027 to Sun 29 Aug 2027: building (you had set unloading)",
                "Unavoidable: Week 6, Mon 9 Aug 2027 to Sun 15 Aug 2027: overload (was building)",
                "Better: Week 8, Mon 23 Aug 2027 to Sun 29 Aug 2027: load 90 % (was 100 %)",
                "ByHand: Week 6, Mon 9 Aug 2027 to Sun 15 Aug 2027: load 60 % (was 100 %)",
            ],
            Lines(now, then, 5), StringComparer.Ordinal);
    }

    [Fact]
    public void A_phase_painted_by_hand_is_no_change_of_the_repair()
    {
        var now = Of(Published, Phase(9, 12, "a"));
        Assert.Equal(
            [
                "Undone: Phase from Mon 13 Sep 2027 to Sun 26 Sep 2027: General preparation (was Competition)",
                "Shape: Phase from Mon 5 Jul 2027 to Sun 11 Jul 2027: Competition (was General preparation)",
                "ByHand: Phase from Mon 30 Aug 2027 to Sun 12 Sep 2027: Competition (was General preparation)",
            ],
            Lines(now, Of(now, Phase(1, 1, "b"), new PaintPhase(Desk.Weeks[10], Desk.Weeks[11], new("c"), PhaseKind.GeneralPreparation, new("y")))), StringComparer.Ordinal);
    }

    [Fact]
    public void A_load_that_is_the_same_in_whole_per_cent_is_not_listed() => Assert.Empty(Lines(Of(Published, Loads(2, 2, 100, more: 1)), Of(Published, Loads(2, 2, 100, more: 1), Loads(3, 3, 100, more: 2))));

    private static List<string> Lines(Season now, Season then, params int[] unavoidable) =>
        [.. RepairChanges.Of(Published, now, then, Team, unavoidable).SelectMany(group => group.Lines.Select(line => $"{group.Cause}: {line}"))];

    private static Season Of(Season season, params SeasonEdit[] edits) => edits.Aggregate(season, (now, edit) => now.With(Assert.IsType<Accepted>(Decider.Decide(now, edit)).Step));

    private static SetWeekLoad Loads(int first, int last, int percent, int more = 0) => new(Desk.Weeks[first - 1], Desk.Weeks[last - 1], new Load(Load.FromPercent(new Percent(percent), Team.ReferenceWeek).Au + more));

    private static SetWeekKind Kind(int first, int last, WeekKind kind) => new(Desk.Weeks[first - 1], Desk.Weeks[last - 1], kind);

    private static PaintPhase Phase(int first, int last, string id) => new(Desk.Weeks[first - 1], Desk.Weeks[last - 1], new(id), PhaseKind.Competition, new($"x-{id}"));
}
