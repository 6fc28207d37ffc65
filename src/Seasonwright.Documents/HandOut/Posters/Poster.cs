using System.Collections.Immutable;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Posters;

/// <summary>
/// The year for the wall: the drawing of the Year page under a letterhead, on one page. It is as large as the page lets it
/// be, with columns wide enough for their figures; text never falls below what the paper may hold. Where room is short rows
/// are lower, and tracks for which there is then no room are left out and named at the foot; what is over goes to the load chart.
/// </summary>
/// <param name="Sheet">The page.</param>
/// <param name="LeftOut">Names of the tracks for which there was no room.</param>
public sealed record Poster(SheetDrawing Sheet, ValueList<string> LeftOut)
{
    /// <summary>The smallest text of the drawing, px.</summary>
    private const double SmallestText = 9;

    /// <summary>px across below which columns of a long season are too slim for figures.</summary>
    private const double ComfortableWidth = 1150;

    /// <summary>The load chart, px high: at the least, as on the Year page, at the most.</summary>
    private const double LowChart = 66, UsualChart = 118, HighChart = 200;

    /// <summary>From one size that is tried to the next.</summary>
    private const double Step = 0.98;

    /// <summary>The paper's margins, points: most printers reach no nearer to the edge (common practice, no source).</summary>
    private const double Margin = 24;

    /// <summary>What goes for want of room before text falls below the paper's least, in order: first what is read from near, then the coach's own tracks.</summary>
    private static readonly ImmutableArray<string> First = ["notes", "emphasis", "dates"], Last = ["practices", "tests", "blocks", "events"];

    public static Poster Of(SharedSeason shared, PosterChoices choices)
    {
        // A row of nothing on a wall says nothing.
        choices = choices with { Hidden = choices.Hidden.Concat(PosterTracks.Empty(shared.Season, shared.Setup)).ToValueList() };
        var page = new Page(shared, choices);
        var own = shared.Season.Tracks.Reverse().Select(track => TrackIds.Own(track.Id));
        var spare = new Queue<string>(First.Concat(own).Concat(Last).Except(choices.Hidden, StringComparer.Ordinal));
        List<string> leftOut = [];
        var least = choices.Paper.LeastText / SmallestText;
        var tightest = new Rows(LowChart, IsTight: true);
        var (poster, used, _) = page.At(least, tightest, leftOut);
        while (used > 1 && spare.TryDequeue(out var next))
        {
            leftOut.Add(next);
            (poster, used, _) = page.At(least, tightest, leftOut);
        }
        if (used > 1)
            return poster;
        // As large as the height lets it be; a narrower drawing may be a little higher, so down from there.
        for (var size = Math.Min(page.Comfortable, least / used); size > least; size *= Step)
        {
            if (Filled(size, new(UsualChart)) is { } larger)
                return larger;
        }
        return Filled(least, new(LowChart)) ?? Filled(least, tightest)!;

        // What is over goes to the chart.
        Poster? Filled(double size, Rows rows) => page.At(size, rows, leftOut) is { Used: <= 1, Left: var left }
            ? page.At(size, rows with { Chart = Math.Min(HighChart, rows.Chart + left) }, leftOut).Poster
            : null;
    }

    /// <summary>The poster as a file: one page, vectors and text.</summary>
    public byte[] Pdf(Edition edition, Scheme scheme) => PdfPainter.File(Sheet.Title, edition.Day, [Sheet], scheme);

    public string Svg(Scheme scheme) => SvgPainter.File(Sheet, scheme);

    /// <summary>How high the load chart is, px, and whether other rows are as low as they can be.</summary>
    private readonly record struct Rows(double Chart, bool IsTight = false);

    /// <summary>One paper, on which the year is tried at several sizes.</summary>
    private sealed class Page(SharedSeason shared, PosterChoices choices)
    {
        private readonly Lazy<ValueList<TrackDrawing>> all = new(() =>
            YearDrawing.Of(shared.Season, shared.Setup, new YearView { Width = ComfortableWidth, Hidden = choices.Hidden }).Tracks);

        /// <summary>The size at which columns are still wide enough for their figures.</summary>
        public double Comfortable => Math.Max(choices.Paper.LeastText / SmallestText, (choices.Paper.Height - 2 * Margin) / ComfortableWidth);

        /// <summary>The page at so many points a px, how much of its height it uses, 1 is all, and the px that are left.</summary>
        public (Poster Poster, double Used, double Left) At(double pointsPerPx, Rows rows, IReadOnlyList<string> leftOut)
        {
            var (paperWidth, paperHeight) = (choices.Paper.Height, choices.Paper.Width);
            var width = (paperWidth - 2 * Margin) / pointsPerPx;
            var view = new YearView { Width = width, LoadHeight = rows.Chart, IsTight = rows.IsTight, Hidden = choices.Hidden.Concat(leftOut).ToValueList() };
            var year = YearDrawing.Of(shared.Season, shared.Setup, view);
            var names = leftOut.Select(Name).OfType<string>().ToValueList();
            // Head and foot end where the chart does.
            var across = year.Width - YearPlan.RightMargin;
            ValueList<TrackDrawing> tracks = [Letterhead.Of(shared, across), .. year.Tracks, PosterFoot.Of(shared.Season, year.Tracks, names, across)];
            var sheet = new SheetDrawing(Say("poster.title", shared.Name), paperWidth, paperHeight, Margin, pointsPerPx, tracks);
            // A drawing has a least width; on paper it must not be wider than the paper.
            var height = tracks.Sum(track => track.Height);
            var room = (paperHeight - 2 * Margin) / pointsPerPx;
            var used = Math.Max(height / room, year.Width <= width + 0.01 ? 0 : year.Width / width);
            // A little less than all, since heights are rounded.
            return (new Poster(sheet, names), used, Math.Max(0, room - height - 0.5));
        }

        /// <summary>What a track that is left out is called; null for one that this season does not have.</summary>
        private string? Name(string id) => all.Value.FirstOrDefault(track => track.Id == id)?.Label;
    }
}
