namespace Seasonwright.Cli;

/// <summary>Texts of files as a line of the terminal shows them.</summary>
internal static class OneLine
{
    /// <summary>Runs of white space made one space: a line break would break the table, and a control character could command the terminal.</summary>
    public static string Of(string? text) => text is null ? ""
        : string.Join(' ', new string([.. text.Select(letter => char.IsControl(letter) ? ' ' : letter)]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
