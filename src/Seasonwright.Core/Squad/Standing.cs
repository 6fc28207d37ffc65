namespace Seasonwright.Core.Squad;

/// <summary>What holds for a person on a day.</summary>
/// <param name="Availability">The tightest of <paramref name="Because"/>; full where nobody reported anything.</param>
/// <param name="Because">The reports it rests on, oldest first: the newest clinician's and what was tightened since.</param>
public sealed record Standing(DateOnly Day, Availability Availability, ValueList<AvailabilityReport> Because)
{
    /// <summary>Whether any of it waits for the reporter's confirmation.</summary>
    public bool IsUnconfirmed => Because.Any(report => !report.IsConfirmed);

    /// <summary>The first day to ask again; null where nothing is restricted or no day is agreed.</summary>
    public DateOnly? ReviewOn => Availability.State == AvailabilityState.Full ? null
        : Because.Where(report => report.Availability.State != AvailabilityState.Full).Min(report => report.ReviewOn);

    /// <summary>The review day lies behind and nobody has reported since: to be told, never to be taken as "full".</summary>
    public bool IsReviewOverdue => ReviewOn < Day;

    /// <summary>The newest report it rests on; null where nobody reported anything.</summary>
    public AvailabilityReport? Newest => Because.Count == 0 ? null : Because[^1];

    /// <summary>
    /// What binds on a day. The newest report that may loosen is the ground; whatever was reported at its instant or since by
    /// anybody is joined to it, so that it can only tighten; what lies before it no longer counts. Reports that start later
    /// do not count yet. The order in which they are given is of no matter.
    /// </summary>
    /// <param name="reports">Of one person, in any order.</param>
    public static Standing On(IEnumerable<AvailabilityReport> reports, DateOnly day)
    {
        var started = reports.Where(report => report.From <= day).ToList();
        var ground = started.Where(report => report.MayLoosen).Select(report => (DateTimeOffset?)report.Recorded).Max();
        var binding = started.Where(report => ground is null || report.Recorded >= ground)
            .OrderBy(report => report.Recorded).ThenBy(report => report.Id);
        return binding.ToValueList() is { Count: > 0 } because
            ? new(day, because.Aggregate(Availability.Full, (sum, report) => sum.And(report.Availability)), because)
            : new(day, Availability.Full, []);
    }

    /// <summary>Whether a report would ask for less than what holds without being one that may loosen. It must not be taken as if it held.</summary>
    public bool IsLoosenedWithoutRight(AvailabilityReport report) => !report.MayLoosen && !report.Availability.IsAtLeastAsTightAs(Availability);
}
