using System.Globalization;
using Seasonwright.Core;
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
    /// <returns><see cref="Kept"/>; why not otherwise: where a day or the load cannot be meant, and where another absence of the player holds one of the days. Then nothing is changed.</returns>
    public static async Task<Answer> TellAbsenceAsync(this Workspace workspace, TeamId team, Guid gesture, PersonId person, AbsenceKind kind, DaySpan days, OutsideLoads loads)
    {
        if (Problems(days, loads, workspace.Today).ToValueList() is { Count: > 0 } wrong) return new NotDone(wrong);
        var refused = default(Refusal);
        var answer = await Recording.KeepAsync(async () =>
        {
            if (await workspace.PlayerAsync(team, person) is not { } player) return false;
            if (player.Absences.FirstOrDefault(known => known.Id != gesture && known.Days.Overlaps(days)) is not { } known)
                return await workspace.Folder.Athletes.AppendAsync(new Absence(gesture, person, kind, days, loads, workspace.Clock.GetUtcNow()));
            refused = Refusal.Say("absence-overlaps", "first", known.Kind.Word(), known.Days.First, known.Days.Last);
            return true;
        }, "athlete");
        return refused is null ? answer : new NotDone(refused);
    }

    /// <summary>Takes back an absence that was told by mistake.</summary>
    public static Task<Answer> TakeBackAbsenceAsync(this Workspace workspace, TeamId team, PersonId person, Guid absence) => Recording.KeepAsync(async () =>
    {
        if (await workspace.PlayerAsync(team, person) is not null) await workspace.Folder.Athletes.EraseAbsenceAsync(person, absence);
        return true;
    }, "athlete");

    private static IEnumerable<Refusal> Problems(DaySpan days, OutsideLoads loads, DateOnly today)
    {
        if (Math.Abs(days.First.DayNumber - today.DayNumber) > ReportingAvailability.FurthestDays) yield return Refusal.Say("absence-far", "first");
        if (days.Length > LongestDays) yield return Refusal.Say("absence-long", "last", LongestDays);
        if (loads.Apart.Select(apart => apart.Load).Prepend(loads.Others).OfType<OutsideLoad>().FirstOrDefault(load => load.PerDay.Au > OutsideLoad.MostAu || load.Minutes?.Value > OutsideLoad.MostMinutes) is { } much)
            yield return Refusal.Say("absence-load", "load", much.PerDay.Au, OutsideLoad.MostAu, OutsideLoad.MostMinutes);
        if (loads.Apart.FirstOrDefault(apart => !days.Contains(apart.Day)) is { } other) yield return Refusal.Say("outside-day", "load", other.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
    }
}
