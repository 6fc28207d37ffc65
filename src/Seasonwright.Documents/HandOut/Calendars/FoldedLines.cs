using System.Text;

namespace Seasonwright.Documents.HandOut.Calendars;

/// <summary>Lines folded as RFC 5545, 3.1 wants them: no line longer than 75 octets, and no letter cut in two, which the library does.</summary>
internal static class FoldedLines
{
    private const int Longest = 75;
    private const string Break = "\r\n";

    /// <param name="text">Lines that may be folded already, each ended by CR LF.</param>
    public static string Of(string text)
    {
        var folded = new StringBuilder(text.Length + text.Length / 32);
        foreach (var line in text.Replace(Break + " ", "", StringComparison.Ordinal).Split(Break, StringSplitOptions.RemoveEmptyEntries))
        {
            var octets = 0;
            foreach (var letter in line.EnumerateRunes())
            {
                if (octets + letter.Utf8SequenceLength > Longest)
                {
                    folded.Append(Break).Append(' ');
                    octets = 1;
                }
                folded.Append(letter.ToString());
                octets += letter.Utf8SequenceLength;
            }
            folded.Append(Break);
        }
        return folded.ToString();
    }
}
