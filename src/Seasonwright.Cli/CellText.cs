using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Seasonwright.Cli;

/// <summary>How values are written in a cell or a field, the same wherever the reader lives. Null, for nothing, stays null.</summary>
internal static class CellText
{
    /// <summary>"2027-07-05", ISO 8601.</summary>
    [return: NotNullIfNotNull(nameof(day))]
    public static string? Day(DateOnly? day) => day?.ToString("O", CultureInfo.InvariantCulture);

    /// <summary>"19:30".</summary>
    [return: NotNullIfNotNull(nameof(time))]
    public static string? Time(TimeOnly? time) => time?.ToString("HH:mm", CultureInfo.InvariantCulture);

    [return: NotNullIfNotNull(nameof(number))]
    public static string? Number(int? number) => number?.ToString(CultureInfo.InvariantCulture);

    /// <summary>As many decimals as it has: "102.5".</summary>
    [return: NotNullIfNotNull(nameof(number))]
    public static string? Number(decimal? number) => number?.ToString("0.############", CultureInfo.InvariantCulture);

    /// <summary>A name of the code in small letters.</summary>
    [return: NotNullIfNotNull(nameof(value))]
    public static string? Word<T>(T? value) => value?.ToString()?.ToLowerInvariant();
}
