using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Seasonwright.Core.Edits;

namespace Seasonwright.Wire.Tests.Schemas;

/// <summary>What stands at Core's records in words, from the file that the compiler writes.</summary>
internal static partial class Descriptions
{
    private static readonly Dictionary<string, XElement> Members = XDocument.Load(Path.ChangeExtension(typeof(Edit).Assembly.Location, "xml"))
        .Descendants("member").ToDictionary(member => member.Attribute("name")!.Value, StringComparer.Ordinal);

    /// <summary>The summary of a type, or of one field of a record; null where nothing is said.</summary>
    public static string? Of(Type type, string? field = null) =>
        !Members.TryGetValue($"T:{type.FullName}", out var member) ? null
        : field is null ? Words(member.Element("summary"))
        : Words(member.Elements("param").FirstOrDefault(param => param.Attribute("name")!.Value == field));

    private static string? Words(XElement? element)
    {
        if (element is null) return null;
        var words = new XElement(element);
        foreach (var see in words.Descendants().Where(part => part.Name.LocalName is "see" or "paramref").ToList())
            see.ReplaceWith(Named((see.Attribute("cref") ?? see.Attribute("name"))!.Value));
        return Space().Replace(words.Value, " ").Trim();
    }

    /// <summary>A limit as its number, anything else by its name on the wire.</summary>
    private static string Named(string member)
    {
        var name = member[(member.LastIndexOf('.') + 1)..];
        return member.StartsWith("F:", StringComparison.Ordinal)
            && typeof(Edit).Assembly.GetType(member[2..^(name.Length + 1)])?.GetField(name) is { IsLiteral: true, DeclaringType.IsEnum: false } limit
            ? string.Create(CultureInfo.InvariantCulture, $"{limit.GetRawConstantValue()}")
            : JsonNamingPolicy.CamelCase.ConvertName(name);
    }

    [GeneratedRegex(@"\s+", RegexOptions.None, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Space();
}
