using System.Globalization;
using System.Text;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.HandOut;

/// <summary>A file that leaves the house.</summary>
/// <param name="Name">Without a folder: small letters a to z, digits, dashes, one dot; fit for every file system.</param>
/// <param name="MediaType">As HTTP and e-mail name its kind.</param>
public sealed record HandOutFile(string Name, string MediaType, byte[] Bytes)
{
    public const string Pdf = "application/pdf";
    public const string Svg = "image/svg+xml";
    public const string Html = "text/html; charset=utf-8";
    public const string Calendar = "text/calendar; charset=utf-8";
    public const string Workbook = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    public const string SeasonFile = "application/json";

    private const int LongestTeam = 60;

    /// <summary>"harbour-vale-2027-28-v3-poster-a3.pdf": the team, the season, the edition, what it is.</summary>
    public static string NameOf(SharedSeason shared, string what) =>
        $"{Plain(shared.Name)}-{(shared.Edition.Version is { } version ? FormattableString.Invariant($"v{version.Number}") : "draft")}-{what}";

    /// <summary>One name for all editions, for a file that replaces the one before it: "harbour-vale-2027-28.ics".</summary>
    public static string LastingNameOf(SharedSeason shared, string ending) => Plain(shared.Name) + ending;

    private static string Plain(string name)
    {
        var plain = new StringBuilder();
        // Accents go, the letters beneath stay; letters of other scripts cannot, and leave a dash.
        foreach (var c in name.Normalize(NormalizationForm.FormD).Where(c => CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark))
        {
            if (char.IsAsciiLetterOrDigit(c)) plain.Append(char.ToLowerInvariant(c));
            else if (plain.Length > 0 && plain[^1] != '-') plain.Append('-');
        }
        var words = plain.ToString(0, Math.Min(plain.Length, LongestTeam)).Trim('-');
        return words.Length == 0 ? "season" : words;
    }
}
