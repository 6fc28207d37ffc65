using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Desk;

/// <summary>
/// Ids that follow from what they name, for doors without memory (command line, demo, solver): the same season and the same
/// natural key give the same id, so the same input gives the same bytes, and for what is brought whole from a file. People's own work gets <see cref="FreshId"/>.
/// </summary>
/// <param name="season">Whose things are named; another season gives other ids.</param>
public sealed class NaturalIds(SeasonId season)
{
    /// <summary>The id of a season that a team starts on a day.</summary>
    public static SeasonId Season(string team, DateOnly firstDay) => new(Hash("season", team, Text(firstDay)));

    /// <summary>The id of the n-th week laid, counted from 1.</summary>
    public WeekId Week(int number) => new(Of("week", number.ToString(CultureInfo.InvariantCulture)));

    /// <summary>The id of a thing of a kind ("match", "event") by what makes it unique among them.</summary>
    /// <returns>32 lower-case hexadecimal digits.</returns>
    public string Of(string kind, params ReadOnlySpan<string> key) => Hash([season.Text, kind, .. key]);

    /// <summary>The id of a session that its season does not have yet: of several with one key the first that is free.</summary>
    /// <param name="isFree">Of those that the season has: whether it may be made anew, since it goes.</param>
    public SessionId Session(Season season, Func<SessionId, bool> isFree, params ReadOnlySpan<string> key)
    {
        for (var number = 1; ; number++)
            if (new SessionId(Of("session", [.. key, Text(number)])) is var id && (season.Session(id) is null || isFree(id))) return id;
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Hash(params ReadOnlySpan<string> parts)
    {
        // Each part with its length before it, so that no two lists of parts run together into one text.
        var text = new StringBuilder();
        foreach (var part in parts) text.Append(CultureInfo.InvariantCulture, $"{part.Length}:{part}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..32];
    }
}
