using System.Globalization;

namespace Seasonwright.Core.Rules;

/// <summary>A setting of a rule: its name, what it may hold and its default. What a team holds instead stands in its setup as text.</summary>
public sealed record Figure
{
    /// <summary>Years that a person may mean; beyond them a day is a slip.</summary>
    public const int FirstYear = 1990, LastYear = 2100;

    private Figure(string name, FigureKind kind, string preset) => (Name, Kind, Default) = (name, kind, preset);

    /// <summary>Part of the file format: never changes.</summary>
    public string Name { get; }

    public FigureKind Kind { get; }

    public FigureUnit Unit { get; private init; }

    /// <summary>In its canonical writing.</summary>
    public string Default { get; }

    /// <summary>Smallest number it holds.</summary>
    public decimal Least { get; private init; }

    /// <summary>Largest number it holds.</summary>
    public decimal Most { get; private init; }

    /// <summary>The words of a choice.</summary>
    public ValueList<string> Choices { get; private init; } = ValueList<string>.Empty;

    /// <summary>Every rule but the five that nobody may switch off has it.</summary>
    public static Figure On { get; } = YesNo("on", true);

    /// <summary>How serious a contested rule may be called.</summary>
    public static Figure HighestSeverity { get; } = Choice("highest_severity", "caution", "warning");

    /// <summary>Since when a governing body's limits hold. They are off until it is said.</summary>
    public static Figure PresetDate { get; } = new("preset_date", FigureKind.Day, "");

    public static Figure Number(string name, decimal preset, FigureUnit unit, decimal? least = null) => new(name, FigureKind.Number, Written(preset))
    {
        Unit = unit,
        Least = least ?? LeastOf(unit),
        Most = MostOf(unit),
    };

    public static Figure Numbers(string name, FigureUnit unit, params ReadOnlySpan<decimal> preset) =>
        new(name, FigureKind.Numbers, string.Join(' ', preset.ToArray().Select(Written))) { Unit = unit, Least = LeastOf(unit), Most = MostOf(unit) };

    public static Figure YesNo(string name, bool preset) => new(name, FigureKind.YesNo, preset ? "yes" : "no");

    /// <param name="choices">The first is the default.</param>
    public static Figure Choice(string name, params ReadOnlySpan<string> choices) =>
        new(name, FigureKind.Choice, choices[0]) { Choices = choices.ToArray().ToValueList() };

    public static Figure Words(string name, params ReadOnlySpan<string> preset) => new(name, FigureKind.Words, string.Join(", ", preset));

    /// <summary>The one way a value is written, or null where this figure cannot hold it.</summary>
    public string? Canonical(string text)
    {
        var trimmed = text.Trim();
        return Kind switch
        {
            FigureKind.Number => ReadNumber(trimmed) is { } number ? Written(number) : null,
            FigureKind.Numbers => CanonicalNumbers(trimmed),
            FigureKind.YesNo => trimmed is "yes" or "no" ? trimmed : null,
            FigureKind.Choice => Choices.Contains(trimmed, StringComparer.Ordinal) ? trimmed : null,
            FigureKind.Day => DateOnly.TryParseExact(trimmed, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is >= FirstYear and <= LastYear ? trimmed : null,
            _ => string.Join(", ", trimmed.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)) is { Length: > 0 } words ? words : null,
        };
    }

    private string? CanonicalNumbers(string text)
    {
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var numbers = parts.Select(ReadNumber).OfType<decimal>().ToList();
        return parts.Length == Default.Split(' ').Length && numbers.Count == parts.Length ? string.Join(' ', numbers.Select(Written)) : null;
    }

    private decimal? ReadNumber(string text) =>
        decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            && number >= Least && number <= Most ? number : null;

    /// <summary>Invariant, no zeros behind the last digit of a fraction.</summary>
    private static string Written(decimal number) => (number / 1.0000000000000000000000000000m).ToString(CultureInfo.InvariantCulture);

    private static decimal LeastOf(FigureUnit unit) => unit == FigureUnit.Celsius ? -20 : 0;

    private static decimal MostOf(FigureUnit unit) => unit switch
    {
        FigureUnit.Share => 10,
        FigureUnit.Points => 300,
        FigureUnit.Minutes => 1440,
        FigureUnit.Hours => 720,
        FigureUnit.Days => 366,
        FigureUnit.Weeks => 60,
        FigureUnit.Rpe => 10,
        FigureUnit.Celsius => 60,
        _ => 1000,
    };
}
