using System.Text.Json;
using System.Text.Json.Serialization;

namespace Seasonwright.Wire;

/// <summary>How every file of ours begins.</summary>
internal sealed record FileHead([property: JsonPropertyName("format")] string? Format, [property: JsonPropertyName("version")] int Version)
{
    /// <summary>What tells at first sight that a text is no such file, or one of a newer program.</summary>
    /// <param name="other">What is said of a text that is something else.</param>
    /// <exception cref="JsonException">The text is no JSON object.</exception>
    public static WireProblem? Foreign(ReadOnlySpan<byte> bytes, string format, int version, int mostBytes, string other, string mend)
    {
        if (bytes.Length > mostBytes) return WireProblem.Say("file.large", "mend.other-file", mostBytes >> 20);
        var head = JsonSerializer.Deserialize<FileHead>(bytes);
        if (head?.Format != format) return new WireProblem(null, null, Sentences.Say(other), Sentences.Say(mend, format));
        return head.Version > version ? WireProblem.Say("file.newer", "mend.newer", head.Version, version)
            : head.Version < 1 ? WireProblem.Say("file.version", "mend.there", head.Version)
            : null;
    }
}
