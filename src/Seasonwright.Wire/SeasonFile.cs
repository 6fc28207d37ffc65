using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Wire;

/// <summary>A season file: one season and its team's setup, no log, no people. Readable JSON, the same bytes for the same content.</summary>
public static class SeasonFile
{
    public const string Format = "seasonwright-season";
    public const int Version = 1;

    private sealed record Form(string Format, int Version, SeasonId Id, TeamId TeamId, FactSet Season, FactSet Team);

    public static string Write(Season season, Setup setup) =>
        JsonSerializer.Serialize(new Form(Format, Version, season.Id, setup.Id, season.Facts, setup.Facts), WireOptions.Readable) + "\n";

    /// <summary>Reads a season file. Never throws on content.</summary>
    /// <returns>The season and setup, or what is wrong, where, and how to mend it.</returns>
    public static (Season Season, Setup Setup)? Read(ReadOnlySpan<byte> bytes, out WireProblem? problem)
    {
        problem = null;
        try
        {
            if (bytes.StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[Encoding.UTF8.Preamble.Length..];
            var version = VersionOf(bytes, out problem);
            if (problem is not null) return null;
            if (version > Version)
            {
                problem = new WireProblem(null, null, $"The file has version {version}; this program reads up to version {Version}.", "Open it with a newer Seasonwright.");
                return null;
            }
            var form = JsonSerializer.Deserialize<Form>(bytes, WireOptions.Readable)!;
            if (Sound.Season(form.Season).Concat(Sound.Setup(form.Team)).FirstOrDefault() is { } reason)
            {
                problem = new WireProblem(null, null, $"{reason.Subject}: {reason.Sentence}", "Mend it there, or take a season file that was written by Seasonwright.");
                return null;
            }
            return (new Season(form.Id, form.Season), new Setup(form.TeamId, form.Team));
        }
        catch (JsonException error)
        {
            problem = WireProblem.Of(error);
            return null;
        }
    }

    private static int VersionOf(ReadOnlySpan<byte> bytes, out WireProblem? problem)
    {
        problem = null;
        var head = JsonSerializer.Deserialize<Head>(bytes);
        if (head?.Format == Format) return head.Version;
        problem = new WireProblem(null, null, "This is no Seasonwright season file.", $"A season file begins with \"format\": \"{Format}\".");
        return 0;
    }

    private sealed record Head([property: JsonPropertyName("format")] string? Format, [property: JsonPropertyName("version")] int Version);
}
