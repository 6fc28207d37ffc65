using System.Collections.Immutable;
using System.Globalization;
using System.Resources;

namespace Seasonwright.Documents.Year;

/// <summary>Every word the year's drawing says, by id, from <c>YearTexts.resx</c>.</summary>
public static class YearTexts
{
    private static readonly ResourceManager Resources = new("Seasonwright.Documents.Year.YearTexts", typeof(YearTexts).Assembly);

    /// <exception cref="MissingManifestResourceException">No text has this id.</exception>
    public static string Say(string id, params object?[] values) =>
        string.Format(CultureInfo.InvariantCulture, Find(id) ?? throw new MissingManifestResourceException($"No text '{id}'."), values);

    /// <summary>The forms of a word from long to short, parted by '|' in the resource.</summary>
    internal static ImmutableArray<string> Forms(string id) => [.. Say(id).Split('|')];

    /// <summary>One of a thing has a text of its own ("one home match"), more share one with the number.</summary>
    internal static string Count(string id, int count) => count == 1 ? Say(id + ".one") : Say(id + ".many", count);

    private static string? Find(string id) => Resources.GetString(id, CultureInfo.InvariantCulture);
}
