using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Posters;

/// <summary>A track that may be left off a poster.</summary>
public sealed record PosterTrack(string Id, string Label);

/// <summary>The tracks of a season's poster, from top to bottom; months and weeks are always there, and qualities go with their emphasis.</summary>
public static class PosterTracks
{
    public static ValueList<PosterTrack> Of(SharedSeason shared) => YearDrawing.Of(shared.Season, shared.Setup, new YearView()).Tracks
        .Where(track => track.Id is not ("months" or "weeks") && !track.Id.StartsWith("emphasis-", StringComparison.Ordinal))
        .Select(track => new PosterTrack(track.Id, track.Label))
        .Concat(shared.Season.Weeks.Any(week => shared.Season.IsLocked(week.Id) || shared.Season.IsReady(week.Id)) ? [new PosterTrack(Marks, Say("poster.marks"))] : [])
        .ToValueList();

    /// <summary>The padlocks and ticks under the weeks.</summary>
    internal const string Marks = "marks";

    /// <summary>Ids of the tracks that have nothing on them.</summary>
    internal static IEnumerable<string> Empty(Season season, Setup setup)
    {
        if (!season.Matches.Any()) yield return "matches";
        if (!season.Events.Any()) yield return "events";
        if (!season.TestDays.Any()) yield return "tests";
        if (season.Phases.IsEmpty) yield return "phases";
        if (season.Blocks.IsEmpty) yield return "blocks";
        if (!season.Weeks.Any(week => season.PracticesOf(week.Id) is not null)) yield return "practices";
        var none = setup.Qualities.Where(quality => season.Weeks.All(week => season.EmphasisOf(week.Id, quality.Id) == Emphasis.None)).ToList();
        if (none.Count == setup.Qualities.Length) yield return "emphasis";
        foreach (var quality in none)
            yield return TrackIds.Emphasis(quality.Id);
        if (!season.Facts.All(SeasonFacets.WeekLoad).Any() && !season.MatchDays.Any()) yield return "load";
        if (!season.Notes.Any() && !season.Facts.All(SeasonFacets.WeekNote).Any()) yield return "notes";
        var filled = season.Facts.All(SeasonFacets.TrackCell).Select(cell => cell.Subject.First).ToHashSet();
        foreach (var track in season.Tracks)
            if (!filled.Contains(track.Id)) yield return TrackIds.Own(track.Id);
    }
}
