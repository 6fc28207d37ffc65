using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.HandOut.Calendars;

/// <summary>
/// Names of calendars and entries that stay the same for as long as what they name, and tell nothing about it: a UUID of version 8
/// (RFC 9562, 5.8) from a hash, as RFC 7986, 5.3 wants them to look.
/// </summary>
internal static class CalendarUid
{
    public static string Of(SeasonId season) => Of(season.Text);

    /// <param name="part">Which of the entries that come from one fact; empty where it is the only one.</param>
    public static string Of(SeasonId season, Key fact, string part = "") => Of(season.Text, fact.Facet, fact.Subject, part);

    private static string Of(params ReadOnlySpan<string> parts)
    {
        // Each part with its length before it, so that no two lists of parts run together into one text.
        var text = new StringBuilder();
        foreach (var part in parts) text.Append(CultureInfo.InvariantCulture, $"{part.Length}:{part}");
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString()));
        hash[6] = (byte)(hash[6] & 0x0F | 0x80);
        hash[8] = (byte)(hash[8] & 0x3F | 0x80);
        return new Guid(hash.AsSpan(0, 16), bigEndian: true).ToString();
    }
}
