using System.Globalization;

namespace Seasonwright.Core.Rules;

/// <summary>Figures as people type them: shares in per cent, a decimal point or comma, words with blanks.</summary>
public static class TypedFigure
{
    /// <summary>A value, canonical, as it stands in a field.</summary>
    public static string Of(Figure figure, string value) => figure.Kind switch
    {
        FigureKind.Number or FigureKind.Numbers => string.Join(' ', value.Split(' ').Select(number => Scaled(figure, number, 100))),
        FigureKind.Words when HasIds(figure) => value.Replace('_', ' '),
        _ => value,
    };

    /// <summary>What was typed as the figure keeps it, or null where it cannot hold that.</summary>
    public static string? Read(Figure figure, string typed) => figure.Canonical(figure.Kind switch
    {
        FigureKind.Number => Scaled(figure, Bare(figure, typed).Replace(',', '.'), 0.01m),
        FigureKind.Numbers => string.Join(' ', typed.Replace(", ", " ", StringComparison.Ordinal).Split([' ', ';'], StringSplitOptions.RemoveEmptyEntries)
            .Select(number => Scaled(figure, number.Replace(',', '.'), 0.01m))),
        FigureKind.Words when HasIds(figure) => string.Join(',', typed.Split(',', StringSplitOptions.TrimEntries).Select(word => word.Replace(' ', '_'))),
        _ => typed,
    });

    /// <summary>The smallest and the largest number it holds, as typed.</summary>
    public static (string Least, string Most) Range(Figure figure) => (Scaled(figure, Written(figure.Least), 100), Scaled(figure, Written(figure.Most), 100));

    /// <summary>Without the unit, which people type as they read it.</summary>
    private static string Bare(Figure figure, string typed) =>
        typed.Trim() is var text && RuleText.Of(figure.Unit) is { Length: > 0 } unit && text.EndsWith(unit, StringComparison.OrdinalIgnoreCase) ? text[..^unit.Length].TrimEnd() : text;

    private static bool HasIds(Figure figure) => figure.Default.Contains('_', StringComparison.Ordinal);

    /// <summary>A share is typed in per cent; what is no number stays as it is, for the figure to refuse.</summary>
    private static string Scaled(Figure figure, string number, decimal by) =>
        figure.Unit == FigureUnit.Share && decimal.TryParse(number, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var share) && Math.Abs(share) < 1_000_000
            ? Written(share * by)
            : number;

    private static string Written(decimal number) => number.ToString("0.############", CultureInfo.InvariantCulture);
}
