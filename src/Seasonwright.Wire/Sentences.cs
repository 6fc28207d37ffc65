using System.Globalization;
using System.Resources;

namespace Seasonwright.Wire;

/// <summary>Every sentence about a text that cannot be read, by id, from <c>Sentences.resx</c>.</summary>
internal static class Sentences
{
    private static readonly ResourceManager Resources = new("Seasonwright.Wire.Sentences", typeof(Sentences).Assembly);

    /// <exception cref="MissingManifestResourceException">No sentence has this id.</exception>
    public static string Say(string id, params object?[] words) => string.Format(CultureInfo.InvariantCulture,
        Resources.GetString(id, CultureInfo.InvariantCulture) ?? throw new MissingManifestResourceException($"No sentence '{id}'."), words);
}
