using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Year;

/// <summary>
/// The year laid out once for page, file and paper: tracks from top to bottom over one row of week columns. Pure: the same
/// season, setup and view give equal drawings, and after an edit only the tracks it touches differ.
/// </summary>
/// <param name="Width">px at 1x.</param>
/// <param name="LabelWidth">px of the gutter at the left that holds the tracks' names.</param>
/// <param name="Columns">The weeks seen, from left to right.</param>
/// <param name="Tracks">From top to bottom; none while the season has no weeks.</param>
/// <param name="Load">The scale of the track "load"; null where that is folded or hidden.</param>
public sealed record YearDrawing(
    double Width, double LabelWidth, ValueList<WeekColumn> Columns, ValueList<TrackDrawing> Tracks, LoadScale? Load)
{
    public double Height => Tracks.Sum(track => track.Height);

    public static YearDrawing Of(Season season, Setup setup, YearView view)
    {
        var plan = new YearPlan(season, setup, view);
        if (plan.Columns.Count == 0)
            return new(plan.Width, plan.LabelWidth, plan.Columns, [], null);
        var load = new LoadTrack(plan);
        return new(plan.Width, plan.LabelWidth, plan.Columns, new YearTracks(plan, load).Seen(), view.Sees("load") ? load.Scale : null);
    }
}
