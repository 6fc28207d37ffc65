using System.Globalization;
using System.Reflection;
using System.Resources;

namespace Seasonwright.Core;

/// <summary>Sentences by id from one resource file, each with its numbers put in. English for now; another language is another resource file.</summary>
/// <param name="name">Full name of the resource without ".resources".</param>
/// <param name="home">The assembly that holds it.</param>
public sealed class SentenceBook(string name, Assembly home)
{
    private readonly ResourceManager resources = new(name, home);

    /// <summary>The sentence, its numbers and days written invariantly.</summary>
    /// <exception cref="MissingManifestResourceException">No sentence has this id.</exception>
    public string Say(string id, params object?[] numbers) => string.Format(CultureInfo.InvariantCulture,
        resources.GetString(id, CultureInfo.InvariantCulture) ?? throw new MissingManifestResourceException($"No sentence '{id}' in {resources.BaseName}."), numbers);
}
