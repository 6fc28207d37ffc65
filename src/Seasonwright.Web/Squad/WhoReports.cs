using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Web.Squad;

/// <summary>Who may have reported, as one choice of the form: the clinicians of the staff by name, then roles.</summary>
/// <param name="Value">Of the form's field.</param>
/// <param name="Label">In words.</param>
/// <param name="Name">Of a clinician of the staff; null for a role.</param>
internal sealed record WhoReports(string Value, string Label, ReporterRole Role, bool IsLicensedClinician, string? Name = null)
{
    /// <param name="names">Names by person id.</param>
    public static IReadOnlyList<WhoReports> Of(Season season, IReadOnlyDictionary<string, string> names) =>
    [
        .. from member in season.Staff
           where member.Role is StaffRole.Doctor or StaffRole.Physiotherapist && names.ContainsKey(member.Person.Text)
           let role = member.Role == StaffRole.Doctor ? ReporterRole.Doctor : ReporterRole.Therapist
           select new WhoReports($"staff-{member.Person}", Words.Say("squad.who-staff", names[member.Person.Text], role.Word()), role, true, names[member.Person.Text]),
        new(nameof(ReporterRole.Coach), Words.Say("squad.who-coach"), ReporterRole.Coach, false),
        new(nameof(ReporterRole.Athlete), Words.Say("squad.who-athlete"), ReporterRole.Athlete, false),
        new(nameof(ReporterRole.Doctor), Words.Say("squad.who-doctor"), ReporterRole.Doctor, true),
        new(nameof(ReporterRole.Therapist), Words.Say("squad.who-therapist"), ReporterRole.Therapist, true),
        new("OtherClinician", Words.Say("squad.who-clinician"), ReporterRole.Other, true),
        new(nameof(ReporterRole.Other), Words.Say("squad.who-other"), ReporterRole.Other, false),
    ];

    /// <param name="typed">The name in the form; "" for none.</param>
    public Reporter Reporter(string typed) => new(Role, IsLicensedClinician, Name ?? typed);
}
