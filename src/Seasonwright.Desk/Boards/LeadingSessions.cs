using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Boards;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Rooms;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;
using Seasonwright.Store;
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
        var season = open.Season;
        if (season.Session(id) is not { } session) return null;
        var setup = (await workspace.ClubAsync(cancel)).SetupFor(open.Setup, session);
        var players = await workspace.WithTeamAsync(setup.Id, session.Day);
        if (BoardSheet.Of(season, setup, session, players) is not { } sheet) return null;
        var marks = await workspace.Folder.Boards.OfAsync(open.Stream.Id, id, cancel);
        return new(sheet, BoardState.Of(marks.Select(BoardText.TryRead).OfType<BoardMark>()), $"[{string.Join(',', marks)}]");
    }

    /// <summary>Two answers with the same stamp say the same: the season, the team, what is told of people and what was tapped are as they were.</summary>
    public static async Task<string> BoardStampAsync(this Workspace workspace, OpenSeason open, SessionId id, CancellationToken cancel = default)
    {
        var marks = await workspace.Folder.Boards.CountAsync(open.Stream.Id, id, cancel);
        var told = await workspace.Folder.Athletes.ToldAsync(cancel);
        return string.Create(CultureInfo.InvariantCulture, $"{open.Stream.State.Number}.{open.TeamStream.State.Number}.{told}.{marks}");
    }

    /// <summary>Keeps what was tapped; what is sent twice is kept once. What cannot be is let go and told: it must not keep the rest from being kept.</summary>
    /// <param name="json">A JSON array of marks.</param>
    public static async Task<KeptMarks> KeepMarksAsync(this Workspace workspace, OpenSeason open, SessionId id, string json, CancellationToken cancel = default)
    {
        if (BoardText.TryReadList(json) is not { Count: <= MostMarks } all) return new(false, Sentences.Say("refused.marks-unreadable"));
        var marks = all.OfType<BoardMark>().ToList();
        var trouble = all.Contains(null) ? Sentences.Say("refused.mark-unread") : marks.SelectMany(mark => mark.Wrong).FirstOrDefault()?.Sentence;
        try
        {
            var isKept = await workspace.Folder.Boards.AppendAsync(open.Stream.Id, id, [.. marks.Where(mark => !mark.Wrong.Any()).Select(mark => (mark.Id, mark.About, BoardText.Of(mark)))], cancel);
            return isKept ? new(true, trouble) : new(false, Sentences.Say("refused.marks-no-season"));
        }
        catch (StoreTrouble cannot)
        {
            return new(false, cannot.Message);
        }
    }
}

/// <summary>A session at the board.</summary>
/// <param name="MarksJson">Everything that was tapped, as boards send it.</param>
public sealed record LedSession(BoardSheet Sheet, BoardState State, string MarksJson);

/// <summary>What became of marks.</summary>
/// <param name="AreKept">They are on the disk; else none is.</param>
/// <param name="Trouble">Why not, or what was let go; null where nothing is wrong.</param>
public sealed record KeptMarks(bool AreKept, string? Trouble);
