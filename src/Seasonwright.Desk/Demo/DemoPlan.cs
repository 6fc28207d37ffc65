using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Desk.Demo;

/// <summary>The demo's phases and blocks: what is painted over its weeks.</summary>
internal static class DemoPlan
{
    private static readonly (int First, int Last, PhaseKind Kind, string? Name)[] PhaseRuns =
    [
        (1, 4, PhaseKind.GeneralPreparation, null),
        (5, 6, PhaseKind.SpecificPreparation, null),
        (7, 8, PhaseKind.PreCompetition, null),
        (9, 24, PhaseKind.Competition, "Competition I"),
        (25, 26, PhaseKind.Transition, "Break"),
        (27, 28, PhaseKind.GeneralPreparation, "Re-entry"),
        (29, 39, PhaseKind.Competition, "Competition II"),
        (40, 43, PhaseKind.Peak, null),
        (44, 47, PhaseKind.Transition, null),
    ];

    private static readonly (int First, int Last, BlockKind Kind, string Name)[] BlockRuns =
    [
        (1, 4, BlockKind.Base, "Base"),
        (5, 8, BlockKind.Build, "Build"),
        (9, 12, BlockKind.Competition, "C1"),
        (13, 16, BlockKind.Competition, "C2"),
        (17, 21, BlockKind.Competition, "C3"),
        (22, 24, BlockKind.Competition, "C4"),
        (25, 26, BlockKind.Transition, "Break"),
        (27, 28, BlockKind.ReEntry, "Re"),
        (29, 32, BlockKind.Competition, "C5"),
        (33, 36, BlockKind.Competition, "C6"),
        (37, 39, BlockKind.Competition, "C7"),
        (40, 43, BlockKind.Peak, "Peak"),
        (44, 47, BlockKind.Transition, "Off"),
    ];

    public static IEnumerable<SeasonEdit> Phases(DemoCalendar calendar) => PhaseRuns.Select(run => new PaintPhase(
        calendar.Week(run.First), calendar.Week(run.Last), new(calendar.Id("phase", $"{run.First}")), run.Kind, new(calendar.Id("phase", $"{run.First}", "rest")), run.Name));

    public static IEnumerable<SeasonEdit> Blocks(DemoCalendar calendar) => BlockRuns.Select(run => new PaintBlock(
        calendar.Week(run.First), calendar.Week(run.Last), new(calendar.Id("block", run.Name)), run.Kind, new(calendar.Id("block", run.Name, "rest")), run.Name));
}
