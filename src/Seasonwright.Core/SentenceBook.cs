using System.Collections;
using System.Collections.Frozen;
using System.Globalization;
using System.Reflection;
using System.Resources;

namespace Seasonwright.Core;

/// <summary>Sentences by id from one resource file, each with its numbers put in. English for now; another language is another resource file.</summary>
public sealed class SentenceBook
{
    private readonly string name;

    // Read once: a year's drawing says more than a thousand sentences, and a resource manager locks and looks for each.
    private readonly Lazy<FrozenDictionary<string, string>> sentences;

    /// <param name="name">Full name of the resource without ".resources".</param>
    /// <param name="home">The assembly that holds it.</param>
    public SentenceBook(string name, Assembly home)
    {
        this.name = name;
        sentences = new(() => Read(name, home));
    }

    /// <summary>The sentence, its numbers and days written invariantly.</summary>
    /// <exception cref="MissingManifestResourceException">No sentence has this id.</exception>
    public string Say(string id, params object?[] numbers) => string.Format(CultureInfo.InvariantCulture,
        sentences.Value.GetValueOrDefault(id) ?? throw new MissingManifestResourceException($"No sentence '{id}' in {name}."), numbers);

    /// <summary>The sentence that takes no numbers, or null where the book has none of this id.</summary>
    public string? Find(string id) => sentences.Value.GetValueOrDefault(id);

    private static FrozenDictionary<string, string> Read(string name, Assembly home)
    {
        using var resources = new ResourceManager(name, home).GetResourceSet(CultureInfo.InvariantCulture, createIfNotExists: true, tryParents: true)!;
        return resources.Cast<DictionaryEntry>().ToFrozenDictionary(entry => (string)entry.Key, entry => (string)entry.Value!, StringComparer.Ordinal);
    }
}
