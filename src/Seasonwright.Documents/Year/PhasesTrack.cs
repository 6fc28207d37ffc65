using System.Collections.Immutable;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>Phases as bars over exactly their weeks.</summary>
internal static class PhasesTrack
{
    private const double Height = 34;
    private const double Top = 5;
    private const double BarHeight = 24;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, "phases", Say("track.phases"));
        sketch.Name(Top + 15.8);
        foreach (var run in plan.Season.Phases)
        {
            if (plan.Across(run.First, run.Last) is not { } columns)
                continue;
            var bar = new Area(columns.First.X + 1, Top, columns.Last.Right - columns.First.X - 2, BarHeight);
            var (ground, ink) = Looking(run.Phase.Kind);
            List<Shape> shapes = [new Box(bar, ground, 4)];
            var name = Ladder.Cut(Names(run.Phase), bar.Width - 10, Type.Heading);
            if (name.Kind == FitKind.Nothing)
                name = Ladder.Whole(Names(run.Phase), bar.Width - 4, Type.SmallHeavy);
            if (name.Kind != FitKind.Nothing)
            {
                var isSnug = name.Width > bar.Width - 12;
                shapes.Add(new TextRun(
                    new(isSnug ? bar.Centre.X : bar.X + 6, Top + 16),
                    name.Text,
                    TextWidths.Of(name.Text, Type.Heading) <= bar.Width - 10 ? Type.Heading : Type.SmallHeavy,
                    ink,
                    isSnug ? TextAnchor.Middle : TextAnchor.Start));
            }
            sketch.Add(new Group(YearWords.Run(YearWords.Phase(run.Phase), run.First, run.Last), shapes.ToValueList(), $"phase/{run.Id}"));
        }
        foreach (var column in plan.Columns)
        {
            var phase = plan.Season.PhaseOf(column.Week);
            sketch.Cell(column, YearWords.Join([plan.Words.Week(column.Week), phase is null ? Say("phase.none") : YearWords.Phase(phase.Phase)]));
        }
        return sketch.Drawing(Height);
    }

    private static ImmutableArray<string> Names(Phase phase) =>
        phase.Name is { } name ? [name] : Forms($"phase.{phase.Kind}");

    private static (MarkLook Ground, TextLook Ink) Looking(PhaseKind kind) => kind switch
    {
        PhaseKind.GeneralPreparation => (Looks.General, Looks.OnGeneral),
        PhaseKind.SpecificPreparation or PhaseKind.PreCompetition => (Looks.Specific, Looks.OnSpecific),
        PhaseKind.Competition => (Looks.Competition, Looks.OnCompetition),
        PhaseKind.Peak => (Looks.Peak, Looks.OnPeak),
        _ => (Looks.Transition, Looks.OnTransition),
    };
}
