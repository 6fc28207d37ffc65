using Seasonwright.Core;
using Seasonwright.Core.Boards;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;
using Seasonwright.Wire;

namespace Seasonwright.Desk.Boards;

/// <summary>Leading a session at the racks: what the board shows, and keeping what is tapped there.</summary>
public static class LeadingSessions
{
    /// <summary>Of one sending: a board that was cut off for a session sends less.</summary>
    private const int MostMarks = 5_000;

    /// <summary>Everybody's exercises, and what was tapped so far.</summary>
    /// <returns>Null where there is no such session, or nothing is written for it.</returns>
    public static async Task<LedSession?> BoardAsync(this Workspace workspace, OpenSeason open, SessionId id, CancellationToken cancel = default)
    {
        var (season, setup) = (open.Season, open.Setup);
        if (season.Session(id) is not { } session) return null;
        var players = (await workspace.RosterAsync(setup.Id)).Where(player => player.WhereOn(setup.Id, session.Day) == Core.Squad.Whereabouts.WithTeam)
            .OrderBy(player => player.Athlete.Shirt).ThenBy(player => player.Athlete.Family, StringComparer.OrdinalIgnoreCase).ToList();
        if (BoardSheet.Of(season, setup, session, players) is not { } sheet) return null;
        var marks = (await workspace.Folder.Boards.OfAsync(open.Stream.Id, id, cancel)).Select(BoardText.Read).ToValueList();
        return new(sheet, marks, BoardState.Of(marks));
    }

    /// <summary>Keeps what was tapped, all of it or nothing; what is sent twice is kept once.</summary>
    /// <param name="json">A JSON array of marks.</param>
    /// <returns>Null where all of it is kept; else why nothing is.</returns>
    public static async Task<string?> KeepMarksAsync(this Workspace workspace, OpenSeason open, SessionId id, string json, CancellationToken cancel = default)
    {
        if (BoardText.TryReadList(json) is not { Count: <= MostMarks } marks) return Sentences.Say("refused.marks-unreadable");
        if (marks.SelectMany(mark => mark.Wrong).FirstOrDefault() is { } wrong) return wrong.Sentence;
        return await workspace.Folder.Boards.AppendAsync(open.Stream.Id, id, [.. marks.Select(mark => (mark.Id, mark.About, BoardText.Of(mark)))], cancel) ? null : Sentences.Say("refused.marks-no-season");
    }
}

/// <summary>A session at the board.</summary>
public sealed record LedSession(BoardSheet Sheet, ValueList<BoardMark> Marks, BoardState State);
