using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>A player of <see cref="Plans"/>' team from long before its season, and what a test changes of her.</summary>
internal static class AnyPlayer
{
    public static readonly TeamId Team = new("team");

    public static Player Ida { get; } = Of("ida", "Norlund", "Ida");

    public static Player Of(string id, string family, string given) => new(
        new Athlete(new(id), family, given, null, [], null, null), [new(new(id), Team, Plans.Monday.AddYears(-1), null, LeadingDays.None)], [], [], [], [], [], []);

    public static Player Born(this Player player, DateOnly day) => player with { Athlete = player.Athlete with { Born = day } };

    /// <summary>Reported by a licensed clinician with the name, the newest last.</summary>
    public static Player Reported(this Player player, Availability availability, DateOnly from, DateOnly? review = null) => player with
    {
        Reports = [.. player.Reports, new AvailabilityReport(new Guid(player.Reports.Count + 1, 0, 0, new byte[8]), player.Id, availability, from, review, new(ReporterRole.Doctor, true, "Dr Wexcombe"), ReportedHow.Phone,
            new("coach"), new DateTimeOffset(from, new TimeOnly(7, 0), TimeSpan.Zero), true)],
    };

    public static Player AwayFor(this Player player, AbsenceKind kind, DaySpan days, OutsideLoad? load = null) => player with
    {
        Absences = [.. player.Absences, new Absence(new Guid(player.Absences.Count + 1, 0, 0, new byte[8]), player.Id, kind, days, OutsideLoads.Of(load), new DateTimeOffset(days.First, new TimeOnly(7, 0), TimeSpan.Zero))],
    };

    /// <summary>In a group of <see cref="Plans"/>' season.</summary>
    public static Player InGroup(this Player player, string group, DateOnly from, DateOnly? to = null) => player with { Groups = [.. player.Groups, new GroupPlace(player.Id, new("s"), new(group), from, to)] };
}
