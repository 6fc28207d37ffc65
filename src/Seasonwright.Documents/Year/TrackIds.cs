using System.Globalization;
using System.Text;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Year;

/// <summary>Ids of the tracks that a team's qualities and a coach's own rows have in the drawing.</summary>
public static class TrackIds
{
    /// <summary>The tracks that say when: they hold nothing of their own.</summary>
    public const string Weeks = "weeks", Months = "months", Dates = "dates";

    public const string Findings = "findings";

    public static string Emphasis(QualityId quality) => "emphasis-" + Plain(quality.Text);

    public static string Own(TrackId track) => "own-" + Plain(track.Text);

    /// <summary>Letters, digits and dashes stay; '.' and '_' become dashes with their code, so that two ids stay two.</summary>
    private static string Plain(string id)
    {
        var plain = new StringBuilder(id.Length);
        foreach (var c in id)
        {
            if (c is '.' or '_') plain.Append(CultureInfo.InvariantCulture, $"--{(int)c:x2}-");
            else plain.Append(c);
        }
        return plain.ToString();
    }
}
