using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Squad;

/// <summary>Recording what somebody reported of a player's availability. Whose word binds is <see cref="Standing"/>'s affair.</summary>
public static class ReportingAvailability
{
    /// <summary>Furthest day from today, both ways, that a report may start or be reviewed on.</summary>
    public const int FurthestDays = 366;

    /// <param name="gesture">The report's id: what is sent twice is recorded once.</param>
    /// <returns>
    /// <see cref="Kept"/> with the report as it stands; why not otherwise: where the days cannot be, where a clinician's report that loosens
    /// does not name the clinician, and where anybody else's would loosen. Then nothing is changed.
    /// </returns>
    public static async Task<(Answer Answer, AvailabilityReport? Report)> ReportAvailabilityAsync(
        this Workspace workspace, Actor actor, TeamId team, Guid gesture, PersonId person, Availability availability, DateOnly from, DateOnly? reviewOn, Reporter by, ReportedHow how)
    {
        var today = workspace.Today;
        // What the coach says is said as it is written down; what is recorded for somebody else waits for that one's word.
        var report = new AvailabilityReport(gesture, person, availability, from, availability.State == AvailabilityState.Full ? null : reviewOn, by, how, new PersonId(actor.Person), workspace.Clock.GetUtcNow(), by.Role == ReporterRole.Coach);
        if (Problems(report, today).ToValueList() is { Count: > 0 } wrong) return (new NotDone(wrong), null);
        var refused = default(Refusal);
        var answer = await Recording.KeepAsync(async () =>
        {
            if (await workspace.PlayerAsync(team, person) is not { } player) return false;
            if (player.Reports.FirstOrDefault(known => known.Id == gesture) is { } there)
            {
                report = there;
                return true;
            }
            // Recorded a moment after the newest, so that a clock set back does not turn the order of what was reported.
            if (player.Reports.Count > 0 && player.Reports.Max(known => known.Recorded) is var newest && newest >= report.Recorded) report = report with { Recorded = newest.AddTicks(1) };
            var standing = player.StandingOn(from > today ? from : today);
            if (standing.IsLoosenedWithoutRight(report))
            {
                refused = by.IsLicensedClinician ? Refusal.Say("clinician-unnamed", "name")
                    : Refusal.Say("only-clinician-loosens", "state", string.Join(": ", new[] { standing.Availability.State.Word(), string.Join(", ", standing.Availability.Restrictions.InWords()) }.Where(text => text.Length > 0)));
                return true;
            }
            return await workspace.Folder.Athletes.AppendAsync(report);
        }, "athlete");
        return refused is not null ? (new NotDone(refused), null) : (answer, answer is Kept ? report : null);
    }

    /// <summary>Marks a report as confirmed by whoever made it; it bound before and binds as before.</summary>
    public static Task<Answer> ConfirmReportAsync(this Workspace workspace, TeamId team, PersonId person, Guid report) =>
        Recording.KeepAsync(async () => await workspace.PlayerAsync(team, person) is not null && await workspace.Folder.Athletes.ConfirmAsync(person, report), "athlete");

    private static IEnumerable<Refusal> Problems(AvailabilityReport report, DateOnly today)
    {
        if (Math.Abs(report.From.DayNumber - today.DayNumber) > FurthestDays) yield return Refusal.Say("report-from-far", "from");
        if (report.ReviewOn is not { } review) yield break;
        if (review < report.From || review < today) yield return Refusal.Say("review-early", "review");
        else if (review.DayNumber - today.DayNumber > FurthestDays) yield return Refusal.Say("review-far", "review");
    }
}
