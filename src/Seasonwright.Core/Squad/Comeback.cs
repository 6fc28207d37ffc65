using Seasonwright.Core.Calendar;

namespace Seasonwright.Core.Squad;

/// <summary>A way back after days out, as reports tell it. Why somebody was out is not known, by design.</summary>
/// <param name="Out">The first day out. Whoever is out again before being full is still on the same way.</param>
/// <param name="Back">The first day not out after it.</param>
/// <param name="Full">The first day of full training; null while nobody reported it.</param>
public sealed record Comeback(DateOnly Out, DateOnly Back, DateOnly? Full)
{
    /// <summary>Days until something could be trained again.</summary>
    public int DaysOut => Back.DayNumber - Out.DayNumber;

    /// <summary>Days until full training, as absences are counted where injuries are studied; null while that is not reported.</summary>
    public int? DaysUntilFull => Full?.DayNumber - Out.DayNumber;

    /// <summary>Every way back that has begun, the earliest first.</summary>
    /// <param name="reports">Of one person, in any order.</param>
    public static ValueList<Comeback> Of(IReadOnlyCollection<AvailabilityReport> reports)
    {
        List<Comeback> found = [];
        var (gone, back) = ((DateOnly?)null, (DateOnly?)null);
        // What binds changes on the first day of a report and on no other.
        foreach (var day in reports.Select(report => report.From).Distinct().Order())
        {
            var state = Standing.On(reports, day).Availability.State;
            if (state == AvailabilityState.Out) (gone, back) = (gone ?? day, null);
            else if (gone is not null) back ??= day;
            if (state != AvailabilityState.Full || gone is null) continue;
            found.Add(new(gone.Value, back!.Value, day));
            (gone, back) = (null, null);
        }
        if (gone is { } since && back is { } first) found.Add(new(since, first, null));
        return found.ToValueList();
    }
}
