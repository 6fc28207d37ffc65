using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Calendars;

namespace Seasonwright.Desk.Seasons;

/// <summary>An open season as it is handed out.</summary>
/// <param name="Season">What others get to see.</param>
/// <param name="Revisions">How often what a calendar says was changed, up to this edition.</param>
public sealed record HandingOut(SharedSeason Season, CalendarRevisions Revisions)
{
    /// <param name="version">The number of a published version; null for the season as it stands, a draft.</param>
    /// <param name="today">The date a draft bears.</param>
    /// <returns>Null where there is no such version.</returns>
    public static async Task<HandingOut?> OfAsync(OpenSeason open, int? version, bool keyMatches, DateOnly today, CancellationToken cancel = default)
    {
        var state = open.Stream.State;
        var published = version is { } number ? await open.VersionAsync(number, cancel) : null;
        if (version is not null && published is null) return null;
        var edition = published is null ? Edition.Draft(today) : new Edition(published.Publication, DateOnly.FromDateTime(published.Instant.LocalDateTime));
        var touches = await open.Stream.TouchesAsync(published?.Entry ?? state.Number, cancel);
        var ofTeam = await open.TeamStream.TouchesAsync(open.TeamStream.State.Number, cancel);
        return new(
            new SharedSeason(published?.Season ?? new Season(open.Season.Id, state.Facts), open.Setup, edition, keyMatches),
            CalendarRevisions.Counted(place => touches.GetValueOrDefault(place) + ofTeam.GetValueOrDefault(place)));
    }
}
