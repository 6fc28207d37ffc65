using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

public enum EventKind
{
    Holiday,
    Exams,
    Camp,
    Tournament,
    NationalTeamWindow,
    Travel,
    RoomClosed,
    Other,
}

/// <summary>Something that is not a match and changes what training is possible.</summary>
/// <param name="Part">Which part of the days, in words ("pm", "from noon on the first day"); null for whole days.</param>
/// <param name="For">Whom it concerns, in words or group names; null for everyone.</param>
/// <param name="Training">How much training is possible, 0 to 130 per cent; null where nobody said: never assume 0.</param>
/// <param name="Provisional">The days are not certain yet.</param>
/// <param name="Legs">Legs of a journey, in order.</param>
/// <param name="Nights">Nights away from home; null where unknown.</param>
/// <param name="Source">The list it came from; null for one entered by hand.</param>
public sealed record Event(
    EventId Id,
    EventKind Kind,
    string Title,
    DaySpan Days,
    string? Part = null,
    string? For = null,
    Percent? Training = null,
    bool Provisional = false,
    string? Place = null,
    int? Nights = null,
    ValueList<Leg>? Legs = null,
    string? Note = null,
    EventSource? Source = null)
{
    /// <summary>Nobody trains on its days.</summary>
    public bool IsClosing => this is { Training.Value: 0, For: null, Part: null };

    /// <summary>The event as its list last had it; as it stands where no list has it otherwise.</summary>
    public Event AsListed() => Source is { Listed: { } listed } source ? listed.On(this) with { Source = source with { Listed = null } } : this;

    /// <summary>This event, which remembers how a list has it wherever it stands otherwise.</summary>
    /// <param name="listed">The event as the list has it, with its source.</param>
    public Event ListedAs(Event listed) => this with { Source = (Source ?? listed.Source)?.Saying(EventListing.Of(listed), EventListing.Of(this)) };
}

/// <summary>One leg of a journey. Times are local to their place; null where unknown.</summary>
/// <param name="ArrivalDay">When it differs from <paramref name="Day"/>.</param>
/// <param name="ZoneShift">Hours the clock moves, + eastwards; null where unknown.</param>
public sealed record Leg(
    DateOnly Day,
    string? From = null,
    string? To = null,
    TimeOnly? Departs = null,
    TimeOnly? Arrives = null,
    DateOnly? ArrivalDay = null,
    decimal? ZoneShift = null)
{
    /// <summary>From door to door; null while its clocks are not known. What the clock moved east was not travelled.</summary>
    public decimal? Hours => this is { Departs: { } departs, Arrives: { } arrives }
        ? (decimal)((ArrivalDay ?? Day).ToDateTime(arrives) - Day.ToDateTime(departs)).TotalHours - (ZoneShift ?? 0) : null;
}
