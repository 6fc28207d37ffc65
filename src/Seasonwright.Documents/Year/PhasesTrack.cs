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
            shapes.AddRange(Named(run.Phase, bar, ink));
            sketch.Add(new Group(YearWords.Run(YearWords.Phase(run.Phase), run.First, run.Last), shapes.ToValueList(), $"phase/{run.Id}"));
        }
        foreach (var column in plan.Columns)
        {
            var phase = plan.Season.PhaseOf(column.Week);
            sketch.Cell(column, YearWords.Join([plan.Words.Week(column.Week), phase is null ? Say("phase.none") : YearWords.Phase(phase.Phase)]));
        }
        return sketch.Drawing(Height);
    }

    /// <summary>
    /// The longest telling form of the name that fits in full size, else in small print, on two lines where it parts, else the name cut.
    /// </summary>
    private static IEnumerable<TextRun> Named(Phase phase, Area bar, TextLook ink)
    {
        const double Pad = 6;
        var names = Names(phase);
        var full = Ladder.Whole([.. names.Where(name => name == names[0] || name.Length > 4)], bar.Width - 2 * Pad, Type.Heading);
        if (full.Kind != FitKind.Nothing)
            return [new(new(bar.X + Pad, Top + 16), full.Text, Type.Heading, ink)];
        var lines = names.SelectMany(Lines).FirstOrDefault(lines => Array.TrueForAll(lines, line => TextWidths.Of(line, Type.SmallHeavy) <= bar.Width - 4));
        if (lines is null && TextFit.Fit(names[0], bar.Width - 4, Type.SmallHeavy) is { Text.Length: >= 3 } cut)
            lines = [cut.Text];
        return lines switch
        {
            null => [],
            [var line] => [Small(line, 15.2)],
            _ => [Small(lines[0], 10), Small(lines[1], 20.8)],
        };

        TextRun Small(string text, double baseline) => new(new(bar.Centre.X, Top + baseline), text, Type.SmallHeavy, ink, TextAnchor.Middle);
    }

    /// <summary>A name on one line, and on two: at a space, or behind a hyphen.</summary>
    private static IEnumerable<string[]> Lines(string name)
    {
        yield return [name];
        for (var i = name.Length - 2; i > 0; i--)
        {
            if (name[i] is ' ' or '-')
                yield return [name[..(i + 1)].TrimEnd(), name[(i + 1)..]];
        }
    }

    private static ImmutableArray<string> Names(Phase phase) =>
        phase.Name is { } name ? [PlainText.Clean(name)] : Forms($"phase.{phase.Kind}");

    internal static (MarkLook Ground, TextLook Ink) Looking(PhaseKind kind) => kind switch
    {
        PhaseKind.GeneralPreparation => (Looks.General, Looks.OnGeneral),
        PhaseKind.SpecificPreparation or PhaseKind.PreCompetition => (Looks.Specific, Looks.OnSpecific),
        PhaseKind.Competition => (Looks.Competition, Looks.OnCompetition),
        PhaseKind.Peak => (Looks.Peak, Looks.OnPeak),
        _ => (Looks.Transition, Looks.OnTransition),
    };
}
