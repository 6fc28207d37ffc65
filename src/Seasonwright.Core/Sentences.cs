using System.Globalization;
using System.Resources;

namespace Seasonwright.Core;

/// <summary>Every sentence Core says to people, by id, from <c>Sentences.resx</c>. English for now; another language is another resource file.</summary>
public static class Sentences
{
    private static readonly ResourceManager Resources = new("Seasonwright.Core.Sentences", typeof(Sentences).Assembly);

    /// <exception cref="MissingManifestResourceException">No sentence has this id.</exception>
    public static string Say(string id, params object?[] numbers) => string.Format(CultureInfo.InvariantCulture,
        Resources.GetString(id, CultureInfo.InvariantCulture) ?? throw new MissingManifestResourceException($"No sentence '{id}'."), numbers);
}
