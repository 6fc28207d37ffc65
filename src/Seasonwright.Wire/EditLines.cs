using System.Text;
using System.Text.Json;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Wire;

/// <summary>Edits written by hand, one JSON object a line. Weeks may be given by id, number or a day; empty lines and lines that begin with # are passed over.</summary>
public static class EditLines
{
    /// <summary>Reads one line for a season as it stands, so that week numbers mean its weeks.</summary>
    /// <param name="line">Text of the line.</param>
    /// <param name="season">The season the edit will be applied to.</param>
    /// <param name="problem">What is wrong with the line, if it is.</param>
    /// <returns>The edit; null after a problem and for a line that holds none.</returns>
    public static Edit? Read(string line, Season season, out WireProblem? problem)
    {
        problem = null;
        if (string.IsNullOrWhiteSpace(line) || line.TrimStart().StartsWith('#')) return null;
        var bytes = Encoding.UTF8.GetBytes(line);
        try
        {
            if (JsonSerializer.Deserialize<Edit>(bytes, WireOptions.For(season)) is { } edit) return edit;
            problem = WireProblem.Say("edit.none", "mend.edit");
        }
        catch (JsonException error)
        {
            problem = WireProblem.Of(error, bytes);
        }
        catch (NotSupportedException)
        {
            problem = WireProblem.Say("edit.unsaid", "mend.unsaid", EditNames.Property);
        }
        return null;
    }

    /// <summary>Reads a JSON array of edits, as pages send them: weeks by id only, in the log's own form.</summary>
    /// <returns>One edit or more; null after a problem.</returns>
    public static IReadOnlyList<Edit>? ReadList(string json, out WireProblem? problem)
    {
        problem = null;
        try
        {
            if (JsonSerializer.Deserialize<List<Edit>>(json, WireOptions.Compact) is { Count: > 0 } edits && !edits.Contains(null!)) return edits;
            problem = WireProblem.Say("edit.none", "mend.edit");
        }
        catch (JsonException error)
        {
            problem = WireProblem.Of(error, Encoding.UTF8.GetBytes(json));
        }
        catch (NotSupportedException)
        {
            problem = WireProblem.Say("edit.unsaid", "mend.unsaid", EditNames.Property);
        }
        return null;
    }
}
