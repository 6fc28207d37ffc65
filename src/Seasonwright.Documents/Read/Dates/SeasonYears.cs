using Seasonwright.Core.Calendar;

namespace Seasonwright.Documents.Read.Dates;

/// <summary>The years a text names for its season: "2026/27", "Season 2026-2027", "2027".</summary>
/// <param name="First">The year the season starts in.</param>
/// <param name="TwoYears">It runs over New Year.</param>
public readonly record struct SeasonYears(int First, bool TwoYears)
{
    /// <summary>The years named in a text without a date in it, or null.</summary>
    public static SeasonYears? Find(string text)
    {
        var tokens = Token.Cut(text.Length > DateText.LongestText ? text[..DateText.LongestText] : text);
        SeasonYears? single = null;
        for (var i = 0; i < tokens.Count; i++)
        {
            if (tokens[i] is not { IsNumber: true, Text.Length: 4, Number: >= 1990 and <= 2149 } first) continue;
            if (i + 2 < tokens.Count && tokens[i + 1].Text is "/" or "-" or "–" && tokens[i + 2] is { IsNumber: true } second
                && (second.Text.Length == 4 ? second.Number : 2000 + second.Number) % 100 == (first.Number + 1) % 100 && second.Text.Length is 2 or 4)
                return new(first.Number, true);
            single ??= new(first.Number, false);
        }
        return single;
    }

    /// <summary>The years of a season's days.</summary>
    public static SeasonYears Of(DaySpan season) => new(season.First.Year, season.Last.Year > season.First.Year);

    public override string ToString() => TwoYears ? FormattableString.Invariant($"{First}/{(First + 1) % 100:00}") : FormattableString.Invariant($"{First}");
}
