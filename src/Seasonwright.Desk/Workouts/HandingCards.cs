using Seasonwright.Core.Seasons;
using Seasonwright.Core.Strength;
using Seasonwright.Desk.Rooms;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Cards;

namespace Seasonwright.Desk.Workouts;

/// <summary>A session's cards as they are handed out: with the version that says the same of it, else as a draft, for what binds on players always holds as of now.</summary>
public static class HandingCards
{
    /// <returns>Null where there is no such session, or nothing is written for it.</returns>
    public static async Task<SquadCards?> CardsAsync(this Workspace workspace, OpenSeason open, SessionId id, CancellationToken cancel = default)
    {
        var season = open.Season;
        if (season.Session(id) is not { } session || WorkoutWeek.Of(season, session) is not { } work) return null;
        var setup = (await workspace.ClubAsync(cancel)).SetupFor(open.Setup, session);
        var published = await open.PublishedAsync(cancel);
        var isPublished = published?.Season.Session(id) is { } same && same.Equals(session) && work.Equals(WorkoutWeek.Of(published.Season, same));
        var edition = isPublished ? new Edition(published!.Publication, DateOnly.FromDateTime(published.Instant.LocalDateTime)) : Edition.Draft(workspace.Today);
        var players = await workspace.WithTeamAsync(setup.Id, session.Day);
        return SquadCards.Of(new SharedSeason(season, setup, edition), session, players);
    }
}
