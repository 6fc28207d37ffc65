using System.Globalization;
using System.Resources;

namespace Seasonwright.Cli;

/// <summary>Every sentence the command line says to people, by id, from <c>Texts.resx</c>.</summary>
internal static class Texts
{
    private static readonly ResourceManager Resources = new("Seasonwright.Cli.Texts", typeof(Texts).Assembly);

    /// <exception cref="MissingManifestResourceException">No sentence has this id.</exception>
    public static string Say(string id, params object?[] words) => string.Format(CultureInfo.InvariantCulture,
        Resources.GetString(id, CultureInfo.InvariantCulture) ?? throw new MissingManifestResourceException($"No sentence '{id}'."), words);
}
