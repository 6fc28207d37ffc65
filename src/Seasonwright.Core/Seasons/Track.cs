using System.Globalization;
using Seasonwright.Core.Facts;

namespace Seasonwright.Core.Seasons;

public enum TrackForm
{
    Text,
    Choice,
    Number,
    Tick,
}

public enum TrackGrain
{
    Week,
    Day,
}

/// <summary>A row of the coach's own, as free as in a spreadsheet.</summary>
/// <param name="Choices">What may be chosen, for <see cref="TrackForm.Choice"/>.</param>
/// <param name="Unit">Shown behind numbers.</param>
/// <param name="Place">Order among the own tracks, lowest first.</param>
public sealed record Track(TrackId Id, string Name, TrackForm Form, TrackGrain Grain = TrackGrain.Week, ValueList<string>? Choices = null, string? Unit = null, int Place = 0);

/// <summary>Where a cell of an own track lies: a week, or a day.</summary>
public readonly record struct CellPlace : ISubject<CellPlace>
{
    private CellPlace(WeekId? week, DateOnly? day)
    {
        Week = week;
        Day = day;
    }

    public WeekId? Week { get; }

    public DateOnly? Day { get; }

    public static CellPlace Of(WeekId week) => new(week, null);

    public static CellPlace Of(DateOnly day) => new(null, day);

    public static CellPlace Parse(string text) => text.Length > 2 && text[1] == '=' ? text[0] switch
    {
        'w' => Of(WeekId.Parse(text[2..])),
        'd' => Of(DateOnly.ParseExact(text[2..], "O", CultureInfo.InvariantCulture)),
        _ => throw new FormatException($"'{text}' is neither a week nor a day."),
    }
    : throw new FormatException($"'{text}' is neither a week nor a day.");

    public override string ToString() => Week is { } week ? $"w={week}" : $"d={Day:O}";
}
