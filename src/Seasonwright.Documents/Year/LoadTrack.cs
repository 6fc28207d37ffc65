using System.Globalization;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Quantities;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>Planned load per week on the per cent scale of the squad's normal hard week: hollow planned, hatched the matches' share.</summary>
internal sealed class LoadTrack
{
    private const double Top = 10;

    /// <summary>px from one figure of the scale to the next, at the least.</summary>
    private const double FigureHeight = 11;
    private const int Step = 25;

    private readonly YearPlan plan;
    private readonly List<(WeekColumn Column, WeekLoad Load)> weeks;

    public LoadTrack(YearPlan plan)
    {
        this.plan = plan;
        weeks = [.. plan.Columns.Select(column => (column, WeekLoad.Of(plan.Season, plan.Setup, column.Week)))];
        // All weeks decide, not only those seen, so that the scale holds still while the view moves along the season.
        var most = plan.Season.Weeks.Select(week => WeekLoad.Of(plan.Season, plan.Setup, week))
            .Select(load => Math.Max(Percent(load.Target ?? Load.Zero), Percent(load.Match))).DefaultIfEmpty(0).Max();
        // Room above the highest bar, to drag it higher.
        var top = Math.Max(125, (int)Math.Ceiling(most / Step) * Step);
        Scale = new LoadScale(top, Top, Top + plan.View.LoadHeight);
    }

    public LoadScale Scale { get; }

    private double Zero => Scale.ZeroY;

    public TrackDrawing Draw()
    {
        var sketch = new TrackSketch(plan, "load", Say("track.load"));
        sketch.Name(Top + 10, Say("hint.load"), Zero, 22);
        // A low chart of heavy weeks has no room for a figure at every line.
        var every = (int)Math.Ceiling(FigureHeight / (Zero - Scale.YOf(Step)));
        for (var percent = Step; percent <= Scale.Top; percent += Step)
        {
            var y = Scale.YOf(percent);
            sketch.Add(new Line(new(plan.Left, y), new(plan.Right, y), Looks.Hairline));
            if (percent % (Step * every) == 0)
                sketch.GutterFigure(percent.ToString(CultureInfo.InvariantCulture), y + 3.2);
        }
        foreach (var (column, load) in weeks)
        {
            Bar(sketch, column, load);
            sketch.Cell(column, $"{plan.Words.Week(column.Week)}: {plan.Words.Load(load)}");
        }
        sketch.Add(new Line(new(plan.Left, Zero), new(plan.Right, Zero), Looks.Rule));
        return sketch.Drawing(Zero + (plan.HasWords ? 18 : 6));
    }

    private void Bar(TrackSketch sketch, WeekColumn column, WeekLoad load)
    {
        var width = Math.Min(48, column.Width * 0.72);
        var left = column.Centre - width / 2;
        var planned = Percent(load.Target ?? Load.Zero);
        var match = Percent(load.Match);
        if (load.Target is not null)
            sketch.Add(new Box(Standing(planned), Looks.LoadPlanned, Math.Min(2, width / 6)));
        if (match > 0)
        {
            var share = Standing(match).Inset(1, 0);
            sketch.Add(new Box(share, Looks.LoadMatchGround));
            sketch.Add(new Hatch(share, Looks.LoadMatch));
        }
        if (!plan.HasWords)
            return;
        if (load.Target is { } target)
            sketch.Centred(column.Centre, Scale.YOf(Math.Max(planned, match)) - 3, column.Width - 4, Type.Small, Looks.Ink,
                [Say("load.title", target.PercentOf(plan.Setup.ReferenceWeek).Value)]);
        if (plan.Season.KindOf(column.Week.Id) is { } kind)
            sketch.Centred(column.Centre, Zero + 12.5, column.Width - 4, Type.Small, Looks.Muted, [Core.Sentences.Say($"kind.{kind}")]);

        Area Standing(double percent) => new(left, Scale.YOf(percent), width, Zero - Scale.YOf(percent));
    }

    /// <summary>Not rounded, so that equal loads are equally high; never above the scale's reach of 300.</summary>
    private double Percent(Load load) => Math.Min(Core.Quantities.Percent.Most, 100.0 * load.Au / plan.Setup.ReferenceWeek.Au);
}
