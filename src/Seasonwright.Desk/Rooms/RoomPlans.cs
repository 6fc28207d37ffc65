using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;
using Seasonwright.Desk.Streams;
using Seasonwright.Solver;
using Seasonwright.Store;

namespace Seasonwright.Desk.Rooms;

/// <summary>The rooms of a club with the seasons that use them: a room's week is read from those, and what is moved in it goes into their logs.</summary>
public static class RoomPlans
{
    /// <summary>Every season of the folder that has been started, open.</summary>
    public static async Task<IReadOnlyList<OpenSeason>> OpenSeasonsAsync(this Workspace workspace, CancellationToken cancel = default)
    {
        List<OpenSeason> open = [];
        foreach (var listed in await workspace.SeasonsAsync(cancel))
            if (await workspace.SeasonAsync(listed.Id, cancel) is { Season.IsStarted: true } season) open.Add(season);
        return open;
    }

    public static async Task<Club> ClubAsync(this Workspace workspace, CancellationToken cancel = default) => new((await workspace.ClubStreamAsync(cancel)).State.Facts);

    /// <summary>A room's week from every season of the folder.</summary>
    /// <param name="first">The first of its seven days.</param>
    /// <exception cref="StoreTrouble">The disk or the file refuses.</exception>
    public static async Task<RoomNow> RoomNowAsync(this Workspace workspace, Room room, DateOnly first, CancellationToken cancel = default)
    {
        List<RoomUser> users = [];
        Dictionary<SeasonId, long> numbers = [];
        foreach (var open in await workspace.OpenSeasonsAsync(cancel))
        {
            if (open.Season.Days is not { } days || !days.Overlaps(new(first, first.AddDays(RoomWeek.Length - 1)))) continue;
            numbers[open.Season.Id] = open.Stream.State.Number;
            var (season, setup, roster) = (open.Season, open.Setup, await workspace.RosterAsync(open.Setup.Id));
            users.Add(new(season, setup, session => Athletes(roster, season, setup, session)));
        }
        return new(RoomPlan.Of(await workspace.ClubAsync(cancel), room, first, users, workspace.Today), numbers);
    }

    /// <summary>Those whose session it is on its day and who are not out; null where the team has nobody on its list.</summary>
    private static int? Athletes(ValueList<Player> roster, Season season, Setup setup, Session session) => roster.Any(player => player.WhereOn(setup.Id, session.Day) == Whereabouts.WithTeam)
        ? roster.Count(player => player.StandingOn(session.Day).Availability.State != AvailabilityState.Out && player.SessionsOn(season, setup.Id, session.Day).Any(one => one.Id == session.Id))
        : null;

    /// <summary>What a proposal would change: every session that gets another place, as it is then.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled before any layout was found.</exception>
    public static ProposedRoom Propose(RoomPlan plan, CancellationToken cancel = default)
    {
        var proposal = RoomProposals.Of(plan.OnGrid, cancel);
        var stood = plan.OnGrid.Asks.ToDictionary(one => one.Ask.Id, one => one.Ask.Place);
        var moves = proposal.Week.Placed.Where(one => !one.At.IsLocked && one.At != stood[one.Ask.Id])
            .Select(one => new RoomMove(plan.Booking(one.Ask.Id)!, plan.OffGrid(one.Ask.Id, one.At))).ToValueList();
        var leave = proposal.Week.Asks.Where(one => one.Ask.Place is null && stood[one.Ask.Id] is not null)
            .Select(one => new RoomMove(plan.Booking(one.Ask.Id)!, null)).ToValueList();
        return new(plan, proposal, [.. moves, .. leave], plan.Week.With(ask => proposal.Week.Asks.First(one => one.Ask.Id == ask.Id).Ask.Place is not { } place ? null
            : place.IsLocked ? ask.Place : plan.OffGrid(ask.Id, place)));
    }

    /// <summary>What keeps a session from a place by the engine's conditions, each with the rule it serves.</summary>
    public static ValueList<WeekReason> WhyNot(RoomPlan plan, SessionId session, RoomPlace place) =>
        RoomProposals.WhyNot(plan.OnGrid, session, place.Day, Clock.Floor(place.Start));

    /// <summary>Moves sessions of several seasons under one press: in one transaction, so that all of them move or none does.</summary>
    /// <param name="gesture">Sent again, it gets its first answer.</param>
    /// <param name="seen">The week as the person saw it: what somebody changed since is not overwritten.</param>
    public static async Task<Answer> MoveAsync(this Workspace workspace, Actor actor, Guid gesture, RoomNow seen, IReadOnlyCollection<RoomMove> moves)
    {
        List<(OpenStream Stream, long BasedOn, IReadOnlyList<Edit> Edits)> parts = [];
        foreach (var season in moves.GroupBy(move => move.Booking.Season))
        {
            if (await workspace.SeasonAsync(season.Key) is not { } open) return new NotDone(Refusal.Say("stream-gone", season.Key.Text));
            if (season.FirstOrDefault(move => move.Booking.IsFixed) is { Booking: var stays }) return new NotDone(Refusal.Say("room-fixed", $"session/{stays.Session.Id}", stays.TeamName, stays.Session.Title));
            parts.Add((open.Stream, seen.Numbers[season.Key], [.. season.Select(move => new SetSession(move.Now(seen.Plan.Week.Room)))]));
        }
        return parts.Count == 0 ? new Kept(0) : await OpenStream.ApplyTogetherAsync(actor, gesture, parts);
    }

    /// <summary>What the person did last in any season, where that only changed sessions; null where it was something else.</summary>
    public static async Task<LastMove?> LastMoveAsync(this Workspace workspace, Actor actor)
    {
        (OpenStream Stream, Store.Log.LogEntry Entry)? newest = null;
        foreach (var stream in (await workspace.OpenSeasonsAsync()).Select(open => open.Stream))
            if (await stream.NextUndoAsync(actor) is { } entry && (newest is null || entry.Instant > newest.Value.Entry.Instant)) newest = (stream, entry);
        if (newest is not var (of, last)) return null;
        var words = (await of.HistoryAsync()).First(line => line.First == last.Number);
        return words.Wrote.All(key => key.Facet == SeasonFacets.Session.Name) ? new(last.Gesture, words.Words) : null;
    }

    /// <summary>Takes back what was moved under one press, in every season that it moved sessions of, or in none.</summary>
    public static async Task<Answer> TakeBackAsync(this Workspace workspace, Actor actor, Guid gesture, Guid undone) =>
        await OpenStream.UndoTogetherAsync(actor, gesture, undone, [.. (await workspace.OpenSeasonsAsync()).Select(open => open.Stream)]);

    /// <summary>Grows with everything that is kept in any season or of the rooms: what a page shows is as new as this says.</summary>
    public static async Task<long> RoomNumberAsync(this Workspace workspace) => (await workspace.RoomStreamsAsync()).Sum(stream => stream.State.Number);

    private static async Task<IReadOnlyList<OpenStream>> RoomStreamsAsync(this Workspace workspace) =>
        [.. (await workspace.OpenSeasonsAsync()).Select(open => open.Stream), await workspace.ClubStreamAsync()];
}

/// <summary>A room's week, and the log numbers of the seasons that it was read from.</summary>
public sealed record RoomNow(RoomPlan Plan, IReadOnlyDictionary<SeasonId, long> Numbers);

/// <summary>A session that goes somewhere else.</summary>
/// <param name="Place">Null takes it from the room.</param>
public sealed record RoomMove(RoomBooking Booking, RoomPlace? Place)
{
    /// <summary>The session as it is then.</summary>
    public Session Now(Room room) => Place is null ? Booking.TakenFrom(room) : Booking.PutIn(room, Place);
}

/// <summary>A room's week as the engine would have it.</summary>
/// <param name="Moves">What that changes; none where it is so.</param>
/// <param name="Week">With them, on the clock.</param>
public sealed record ProposedRoom(RoomPlan Plan, RoomProposal Proposal, ValueList<RoomMove> Moves, RoomWeek Week);

/// <summary>What a person would take back next.</summary>
public sealed record LastMove(Guid Gesture, string Words);
