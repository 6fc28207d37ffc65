using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Squad;
using Seasonwright.Documents;
using Seasonwright.Web.Week;

namespace Seasonwright.Web.Squad;

/// <summary>What the pages of the squad say of a person, in the team's dates and on the team's clock.</summary>
/// <param name="machine">The clock of a team that has told no zone.</param>
/// <param name="season">The days of the season that is looked at: others are told with their year. Null where the page is of one week.</param>
internal sealed class SquadSay(LocaleSettings locale, DateOnly today, TimeZoneInfo machine, DaySpan? season = null)
{
    // A team that has told no zone is where this machine is.
    private readonly TimeZoneInfo zone = locale.Zone != new LocaleSettings().Zone && TimeZoneInfo.TryFindSystemTimeZoneById(locale.Zone, out var told) ? told : machine;

    public DateOnly Today => today;

    /// <summary>"modified: no jump, no sprint".</summary>
    public static string Availability(Availability availability) => availability switch
    {
        { State: AvailabilityState.Modified, Restrictions.IsNone: true } => Words.Say("squad.modified-unnamed"),
        { State: AvailabilityState.Modified } => Words.Say("squad.modified", string.Join(", ", availability.Restrictions.InWords())),
        _ => availability.State.Word(),
    };

    /// <summary>"Siri Fenwold, physio or athletic therapist".</summary>
    public static string By(Reporter by) => string.Join(", ", new[] { by.Name, by is { Role: ReporterRole.Other, IsLicensedClinician: true } ? Words.Say("squad.other-clinician") : by.Role.Word() }.OfType<string>());

    /// <summary>"Thu 14 Oct 07:03, by message".</summary>
    public string When(AvailabilityReport report) => Words.Say("squad.when", Day(DateOnly.FromDateTime(Local(report.Recorded))), Clock(report.Recorded), report.How.Word());

    /// <summary>"today", or the day.</summary>
    public string Day(DateOnly day) => day == today ? Words.Say("squad.today") : Written(day);

    public string Days(DaySpan days) => days.Length == 1 ? Day(days.First) : $"{Written(days.First)} – {Written(days.Last)}";

    /// <summary>"review Thu 21 Oct"; null where nothing is to be reviewed.</summary>
    public string? Review(Standing standing) => standing.ReviewOn is not { } review ? null
        : standing.IsReviewOverdue ? Words.Say("squad.review-over", Written(review)) : Words.Say("squad.review", Day(review));

    /// <summary>"national team Mon 25 Oct – Sun 31 Oct, 495 AU a day".</summary>
    public string Absence(Absence absence) => Words.Say("squad.absence", absence.Kind.Word(), Days(absence.Days), string.Join(", ",
        [.. absence.Loads.Apart.Select(apart => Words.Say("squad.absence-day", absence.Days.Length > 7 ? Written(apart.Day) : apart.Day.ToString("ddd", CultureInfo.InvariantCulture), apart.Load.PerDay.Au)), .. Others(absence)]));

    /// <summary>"back since Mon 25 Oct: national team, 7 days, 3360 AU outside".</summary>
    public string Back(Absence absence) => Words.Say("squad.back-since", Day(absence.Days.Last.AddDays(1)), absence.Kind.Word(), Count("squad.days", absence.Days.Length),
        absence.Au is { } au ? Words.Say("squad.outside", au) : Words.Say(absence.Loads == OutsideLoads.Unknown ? "squad.load-unknown" : "squad.load-partly"));

    /// <summary>The same with the days since: "1 day since it ended".</summary>
    public string BackFor(Absence absence) => $"{Back(absence)} ({Count("squad.since", today.DayNumber - absence.Days.Last.DayNumber)})";

    /// <summary>With what the absence loads in all, where that is known and more than one day's.</summary>
    public string AbsenceInAll(Absence absence) => absence.Days.Length > 1 && absence.Au is { } au ? Words.Say("squad.absence-sum", Absence(absence), au) : Absence(absence);

    /// <summary>The squads of a team that a person is in on a day or comes to, the main one by the team's name.</summary>
    public string Squads(Player player, TeamId team, string name) => string.Join(" · ", player.Memberships.Where(one => one.Team == team && one.Days.Last >= today)
        .OrderBy(one => one.Squad is not null).Select(one => string.Join(" ", new[] { one.Squad ?? name, one.From > today ? Words.Say("squad.from-day", Written(one.From)) : null,
            one.To is { } to ? Words.Say("squad.to-day", Written(to)) : null,
            one.Leads.Weekdays.Count > 0 ? Words.Say("squad.leads", string.Join(", ", one.Leads.Weekdays.OrderBy(day => ((int)day + 6) % 7).Select(day => CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedDayName(day)))) : null }.OfType<string>())));

    /// <summary>"Rookies", "Rookies from Mon 25 Oct": the groups of a season that the person is in today or comes to.</summary>
    public string Groups(Player player, Season season) => string.Join(" · ", player.Groups.Where(place => place.Season == season.Id && !(place.To < today) && season.Groups.Any(line => line.Id == place.Group))
        .Select(place => string.Join(" ", new[] { SessionSay.NameOf(season, place.Group), place.From > today ? Words.Say("squad.from-day", Written(place.From)) : null,
            place.To is { } to ? Words.Say("squad.to-day", Written(to)) : null }.OfType<string>())));

    /// <summary>What goes back to whoever reported: "Recorded 07:03: Ida Norlund modified from today: no jump; review Thu 21 Oct. Unconfirmed until you confirm."</summary>
    /// <param name="sessions">The day's sessions and what becomes of each.</param>
    public string Reply(Athlete athlete, AvailabilityReport report, IReadOnlyList<SessionFit> sessions)
    {
        var restrictions = string.Join(", ", report.Availability.Restrictions.InWords());
        var told = Words.Say("squad.reply", Clock(report.Recorded), athlete.Name, report.Availability.State.Word(), Day(report.From));
        return $"{told}{(restrictions.Length > 0 ? $": {restrictions}" : "")}{(report.ReviewOn is { } review ? $"; {Words.Say("squad.review", Written(review))}" : "")}.{(sessions.Count > 0 ? $" {Words.Say("squad.reply-sessions", Day(sessions[0].Session.Day), string.Join("; ", sessions.Select(Fit)))}" : "")}{(report.IsConfirmed ? "" : $" {Words.Say("squad.reply-unconfirmed")}")}";
    }

    /// <summary>"18:30 Practice: no contact, at most 30 min".</summary>
    public static string Fit(SessionFit fit)
    {
        var session = $"{fit.Session.Start?.Iso() ?? Sentences.Say($"slot.{fit.Session.Slot}")} {SessionWords.Name(fit.Session)}";
        string?[] how = [fit.Kind switch
        {
            FitKind.Modified => fit.Without.Count > 0 ? string.Join(", ", fit.Without.Select(tag => tag.Word())) : null,
            FitKind.Replaced => Words.Say("squad.fit.Replaced", Sentences.Say($"session.{fit.Instead}")),
            var kind => Words.Say($"squad.fit.{kind}"),
        }, fit.MostMinutes is { } most ? Words.Say("squad.fit.minutes", most.Value) : null];
        return Words.Say("squad.fit", session, string.Join(", ", how.OfType<string>()));
    }

    // Nothing is left to say of the others where every day is told apart.
    private static IEnumerable<string> Others(Absence absence) => absence.Loads.Apart.Count == absence.Days.Length ? []
        : [Words.Say((absence.Loads.Apart.Count > 0, absence.Loads.Others) switch
        {
            (false, null) => "squad.load-unknown",
            (false, _) => "squad.load-each",
            (true, null) => "squad.load-others-unknown",
            (true, _) => "squad.load-others",
        }, absence.Loads.Others?.PerDay.Au)];

    private static string Count(string id, int number) => number == 1 ? Words.Say($"{id}-one") : Words.Say(id, number);

    private string Written(DateOnly day) => season?.Contains(day) == false ? day.Long(locale) : day.Short(locale);

    /// <summary>"07:03", where the team is.</summary>
    public string Clock(DateTimeOffset instant) => Local(instant).ToString("HH:mm", CultureInfo.InvariantCulture);

    private DateTime Local(DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, zone).DateTime;
}
