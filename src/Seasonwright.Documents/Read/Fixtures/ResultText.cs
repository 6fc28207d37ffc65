using System.Globalization;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>A result as a list writes it: "31:24", "28 – 25 (14 – 11)", "W 3-1".</summary>
/// <param name="First">The figure in front.</param>
/// <param name="Second">The figure behind.</param>
/// <param name="Won">True for a letter W in front, false for L; null without one.</param>
internal readonly record struct ResultText(int First, int Second, bool? Won = null)
{
    /// <summary>Reads the two figures in front; what stands in brackets (half time, sets) is another matter. Null if there are none.</summary>
    public static ResultText? Read(string cell)
    {
        var tokens = Token.Cut(cell.Length > 60 ? cell[..60] : cell);
        var at = 0;
        bool? won = null;
        if (tokens.Count > 0 && tokens[0].IsWord && tokens[0].Text.Length <= 4)
        {
            won = tokens[0].Text.ToUpperInvariant() switch { "W" or "S" or "V" or "WON" or "WIN" => true, "L" or "N" or "LOST" or "LOSS" => false, _ => null };
            if (won is null && tokens[0].Text.ToUpperInvariant() is not ("D" or "U" or "DRAW" or "T" or "FT")) return null;
            at++;
        }
        if (at + 2 >= tokens.Count || tokens[at] is not { IsNumber: true, Text.Length: <= 3 } first || tokens[at + 2] is not { IsNumber: true, Text.Length: <= 3 } second) return null;
        if (tokens[at + 1].Text is not (":" or "-" or "–" or "—" or "/")) return null;
        // "28-25-3" and "12/9/26" are no results.
        if (at + 3 < tokens.Count && tokens[at + 3].Text is ":" or "-" or "–" or "/" or ".") return null;
        return new(first.Number, second.Number, won);
    }

    public ResultText Turned => this with { First = Second, Second = First };

    /// <summary>"31-24".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{First}-{Second}");
}
