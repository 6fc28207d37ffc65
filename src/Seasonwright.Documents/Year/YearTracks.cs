using Seasonwright.Core;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Year;

/// <summary>Which tracks there are, in which order, and which of them are seen.</summary>
internal sealed class YearTracks(YearPlan plan, LoadTrack load)
{
    public ValueList<TrackDrawing> Seen() => Ordered()
        .Where(track => !plan.View.Hides(track.Id))
        .Select(track => plan.View.Folds(track.Id) ? Folding.Of(track.Draw(), plan) : track.Draw())
        .ToValueList();

    private List<(string Id, Func<TrackDrawing> Draw)> All()
    {
        List<(string, Func<TrackDrawing>)> tracks =
        [
            (TrackIds.Months, () => MonthsTrack.Draw(plan)),
            (TrackIds.Weeks, () => WeeksTrack.Draw(plan)),
            (TrackIds.Dates, () => DatesTrack.Draw(plan)),
            ("matches", () => MatchesTrack.Draw(plan)),
            ("practices", () => PracticesTrack.Draw(plan)),
            ("events", () => EventsTrack.Draw(plan)),
            ("phases", () => PhasesTrack.Draw(plan)),
            ("blocks", () => BlocksTrack.Draw(plan)),
            ("load", load.Draw),
            ("emphasis", () => EmphasisTrack.Draw(plan)),
        ];
        if (plan.View.Sees("emphasis"))
            tracks.AddRange(plan.Setup.Qualities.Select(quality =>
                (TrackIds.Emphasis(quality.Id), (Func<TrackDrawing>)(() => QualityTrack.Draw(plan, quality)))));
        tracks.Add(("tests", () => TestsTrack.Draw(plan)));
        tracks.AddRange(plan.Season.Tracks.Select(track => (TrackIds.Own(track.Id), (Func<TrackDrawing>)(() => OwnTrack.Draw(plan, track)))));
        if (plan.View.Findings.Count > 0)
            tracks.Add((TrackIds.Findings, () => FindingsTrack.Draw(plan)));
        tracks.Add(("notes", () => NotesTrack.Draw(plan)));
        if (plan.Today is not null)
            tracks.Add(("today", () => TodayTrack.Draw(plan)));
        return tracks;
    }

    /// <summary>Named tracks as wished; each other one behind the track it follows by default, or first.</summary>
    private List<(string Id, Func<TrackDrawing> Draw)> Ordered()
    {
        var all = All();
        var order = plan.View.TrackOrder.Distinct(StringComparer.Ordinal).Where(id => all.Exists(track => track.Id == id)).ToList();
        var before = -1;
        foreach (var (id, _) in all)
        {
            var at = order.IndexOf(id);
            if (at < 0)
                order.Insert(at = before + 1, id);
            before = at;
        }
        return [.. order.Select(id => all.Find(track => track.Id == id))];
    }
}
