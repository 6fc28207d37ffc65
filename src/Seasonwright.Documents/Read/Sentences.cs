using System.Globalization;
using System.Resources;

namespace Seasonwright.Documents.Read;

/// <summary>Every sentence the readers say to people, by id, from <c>Read/Sentences.resx</c>.</summary>
internal static class Sentences
{
    private static readonly ResourceManager Resources = new("Seasonwright.Documents.Read.Sentences", typeof(Sentences).Assembly);

    /// <exception cref="MissingManifestResourceException">No sentence has this id.</exception>
    public static string Say(string id, params object?[] values) => string.Format(CultureInfo.InvariantCulture,
        Resources.GetString(id, CultureInfo.InvariantCulture) ?? throw new MissingManifestResourceException($"No sentence '{id}'."), values);
}
