using System.Text;
using System.Text.Json;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Wire;

/// <summary>What a season file holds.</summary>
/// <param name="Edition">The published version that it is; null for a season that is being worked on.</param>
public sealed record SeasonContent(Season Season, Setup Setup, Edition? Edition = null)
{
    public void Deconstruct(out Season season, out Setup setup) => (season, setup) = (Season, Setup);
}

/// <summary>A season file: one season and its team's setup, no log, no people. Readable JSON, the same bytes for the same content.</summary>
public static class SeasonFile
{
    public const string Format = "seasonwright-season";
    public const int Version = 1;

    /// <summary>A full season has a tenth of a megabyte.</summary>
    public const int MostBytes = 32 << 20;

    private sealed record Form(string Format, int Version, SeasonId Id, TeamId TeamId, FactSet Season, FactSet Team, EditionMark? Edition = null);

    private sealed record EditionMark(int Version, DateOnly Day);

    /// <param name="edition">The published version that the file is to say it is; null, or a draft, says nothing.</param>
    public static string Write(Season season, Setup setup, Edition? edition = null) => JsonSerializer.Serialize(
        new Form(Format, Version, season.Id, setup.Id, season.Facts, setup.Facts, edition?.Version is { } version ? new(version.Number, edition.Day) : null),
        WireOptions.Readable) + "\n";

    /// <summary>Reads a season file. Never throws on content.</summary>
    /// <returns>The season and setup, or what is wrong, where, and how to mend it.</returns>
    public static SeasonContent? Read(ReadOnlySpan<byte> bytes, out WireProblem? problem)
    {
        if (bytes.StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[Encoding.UTF8.Preamble.Length..];
        try
        {
            problem = FileHead.Foreign(bytes, Format, Version, MostBytes, "file.other", "mend.other");
            if (problem is not null) return null;
            var form = JsonSerializer.Deserialize<Form>(bytes, WireOptions.Readable)!;
            if (Sound.Season(form.Season).Concat(Sound.Setup(form.Team)).FirstOrDefault() is { } reason)
            {
                problem = new WireProblem(null, null, Sentences.Say("file.unsound", reason.Subject, reason.Sentence), Sentences.Say("mend.there"));
                return null;
            }
            var season = new Season(form.Id, form.Season);
            var version = form.Edition is { } mark ? season.Facts.Find(SeasonFacets.Publication, new VersionNumber(mark.Version)) : null;
            if (form.Edition is not null && version is null)
            {
                problem = WireProblem.Say("file.edition", "mend.there", form.Edition.Version);
                return null;
            }
            return new(season, new Setup(form.TeamId, form.Team), version is null ? null : new Edition(version, form.Edition!.Day));
        }
        catch (JsonException error)
        {
            problem = WireProblem.Of(error, bytes);
            return null;
        }
    }

    /// <summary>Whether a text calls itself a season file, sound or not: it begins with the format, as every one we wrote does.</summary>
    public static bool IsNamed(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[Encoding.UTF8.Preamble.Length..];
        var reader = new Utf8JsonReader(bytes, isFinalBlock: false, default);
        try
        {
            return reader.Read() && reader.TokenType == JsonTokenType.StartObject
                && reader.Read() && reader.TokenType == JsonTokenType.PropertyName && reader.ValueTextEquals("format")
                && reader.Read() && reader.TokenType == JsonTokenType.String && reader.ValueTextEquals(Format);
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
