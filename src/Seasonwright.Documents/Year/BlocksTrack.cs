using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>Blocks as brackets over exactly their weeks: name and loading pattern above, the place of each week in the block below.</summary>
internal static class BlocksTrack
{
    private const double Line = 19;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, "blocks", Say("track.blocks"));
        var height = plan.IsSlim ? 26 : 36;
        sketch.Name(14, plan.IsSlim ? "" : Say("hint.blocks"), height);
        foreach (var run in plan.Season.Blocks)
        {
            if (plan.Across(run.First, run.Last) is not { } columns)
                continue;
            var (from, to) = (columns.First.X + 1.5, columns.Last.Right - 1.5);
            List<Shape> shapes = [new Polyline([new(from, Line - 8), new(from, Line), new(to, Line), new(to, Line - 8)], Looks.Bracket)];
            for (var number = Math.Max(run.First.Number, columns.First.Week.Number); number < columns.Last.Week.Number; number++)
            {
                var x = plan.ColumnOf(plan.Season.Weeks[number - 1])!.Right;
                shapes.Add(new Line(new(x, Line - 2.5), new(x, Line), Looks.Bracket));
            }
            var name = Ladder.Cut(Names(run), to - from - 8, Type.Body);
            if (name.Kind != FitKind.Nothing)
                shapes.Add(new TextRun(new((from + to) / 2, Line - 5.5), name.Text, Type.Body, Looks.Ink, TextAnchor.Middle));
            sketch.Add(new Group(YearWords.Run(YearWords.Block(run.Block), run.First, run.Last), shapes.ToValueList(), $"block/{run.Id}"));
        }
        foreach (var column in plan.Columns)
            Week(plan, sketch, column);
        return sketch.Drawing(height);
    }

    private static void Week(YearPlan plan, TrackSketch sketch, WeekColumn column)
    {
        List<string> sentence = [plan.Words.Week(column.Week)];
        if (plan.Season.BlockOf(column.Week) is { } run)
        {
            var place = column.Week.Number - run.First.Number + 1;
            var length = run.Last.Number - run.First.Number + 1;
            // The hardest week stands out, the one that ends the block steps back.
            var kind = plan.Season.KindOf(column.Week.Id);
            if (!plan.IsSlim)
                sketch.Centred(column.Centre, Line + 11.5, column.Width - 2,
                    kind == WeekKind.Overload ? Type.SmallHeavy : Type.Small, kind?.IsClosing() == true ? Looks.Muted : Looks.Ink,
                    [plan.HasWords ? Say("block.place.short", place, length) : place.ToString(CultureInfo.InvariantCulture)]);
            sentence.Add(Say("block.place", YearWords.Block(run.Block), place, length));
        }
        else
        {
            sentence.Add(Say("block.none"));
        }
        sentence.Add(plan.Season.KindOf(column.Week.Id) is { } week ? Core.Sentences.Say($"kind.{week}") : Say("kind.none"));
        sketch.Cell(column, YearWords.Join(sentence));
    }

    private static ImmutableArray<string> Names(BlockRun run)
    {
        var names = run.Block.Name is { } own ? [own] : Forms($"block.{run.Block.Kind}");
        return run.Pattern.Length == 0 ? names : [$"{names[0]} {run.Pattern}", .. names];
    }
}
