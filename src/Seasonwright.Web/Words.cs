using System.Globalization;
using System.Resources;

namespace Seasonwright.Web;

/// <summary>Every sentence the pages say, by id, from <c>Words.resx</c>. English for now; another language is another resource file.</summary>
public static class Words
{
    private static readonly ResourceManager Resources = new("Seasonwright.Web.Words", typeof(Words).Assembly);

    /// <exception cref="MissingManifestResourceException">No sentence has this id.</exception>
    public static string Say(string id, params object?[] numbers) => string.Format(CultureInfo.InvariantCulture,
        Resources.GetString(id, CultureInfo.InvariantCulture) ?? throw new MissingManifestResourceException($"No sentence '{id}'."), numbers);
}
