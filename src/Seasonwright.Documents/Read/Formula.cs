namespace Seasonwright.Documents.Read;

/// <summary>Cells that a spreadsheet would take for a formula or that hold an error. Here they are text and are never run.</summary>
internal static class Formula
{
    public static bool Is(string cell) => cell.StartsWith('=') || IsError(cell);

    /// <summary>"#NAME?", "#REF!", "#N/A": nothing can be read from it.</summary>
    public static bool IsError(string cell) => cell.Length > 3 && cell[0] == '#' && (cell[^1] is '!' or '?' || cell.Equals("#N/A", StringComparison.OrdinalIgnoreCase) || cell.Equals("#NV", StringComparison.OrdinalIgnoreCase));

    /// <summary>A sign in front of a name ("-Brovik"): the name without it, or null.</summary>
    public static string? Unsigned(string cell) => cell.Length > 1 && cell[0] is '-' or '+' && char.IsLetter(cell.TrimStart('-', '+', ' ').FirstOrDefault()) ? cell.TrimStart('-', '+', ' ') : null;
}
