using System.Globalization;

namespace Seasonwright.Documents.Read.Dates;

/// <summary>A piece of a text: figures, letters, or one other character. White space is only noted.</summary>
internal readonly record struct Token(string Text, int Start, bool Spaced)
{
    public int End => Start + Text.Length;

    public bool IsNumber => Text.Length > 0 && char.IsAsciiDigit(Text[0]);

    public bool IsWord => Text.Length > 0 && char.IsLetter(Text[0]);

    /// <summary>The number of up to eight figures, or -1.</summary>
    public int Number => IsNumber && Text.Length <= 8 ? int.Parse(Text, NumberStyles.None, CultureInfo.InvariantCulture) : -1;

    public bool Is(string text) => string.Equals(Text, text, StringComparison.OrdinalIgnoreCase);

    public static List<Token> Cut(string text)
    {
        var tokens = new List<Token>();
        for (var i = 0; i < text.Length;)
        {
            var (start, spaced) = (i, false);
            while (i < text.Length && char.IsWhiteSpace(text[i])) (i, spaced) = (i + 1, true);
            if (i == text.Length) break;
            start = i++;
            if (char.IsAsciiDigit(text[start])) while (i < text.Length && char.IsAsciiDigit(text[i])) i++;
            else if (char.IsLetter(text[start])) while (i < text.Length && char.IsLetter(text[i])) i++;
            tokens.Add(new Token(text[start..i], start, spaced));
        }
        return tokens;
    }
}
