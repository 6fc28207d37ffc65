using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Squad;

/// <summary>Telling when a player is away, and what is done there.</summary>
public static class TellingAbsences
{
    /// <summary>Longest absence in days.</summary>
    public const int LongestDays = 366;

    /// <param name="gesture">The absence's id: what is sent twice is told once.</param>
    /// <param name="load">On each day; null while it is not known.</param>
    public static async Task<Answer> TellAbsenceAsync(this Workspace workspace, TeamId team, Guid gesture, PersonId person, AbsenceKind kind, DaySpan days, OutsideLoad? load)
    {
        if (!Frame.PossibleDays.Contains(days.First) || !Frame.PossibleDays.Contains(days.Last)) return new NotDone(Refusal.Say("athlete-day", "first"));
        if (days.Length > LongestDays) return new NotDone(Refusal.Say("absence-long", "last", LongestDays));
        return await Recording.KeepAsync(async () => await workspace.PlayerAsync(team, person) is not null
            && await workspace.Folder.Athletes.AppendAsync(new Absence(gesture, person, kind, days, load, workspace.Clock.GetUtcNow())), "athlete");
    }

    /// <summary>Takes back an absence that was told by mistake.</summary>
    public static Task<Answer> TakeBackAbsenceAsync(this Workspace workspace, TeamId team, PersonId person, Guid absence) => Recording.KeepAsync(async () =>
    {
        if (await workspace.PlayerAsync(team, person) is not null) await workspace.Folder.Athletes.EraseAbsenceAsync(person, absence);
        return true;
    }, "athlete");
}
