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
        try
        {
            return JsonSerializer.Deserialize<Edit>(line, WireOptions.For(season))
                ?? throw new JsonException("A line holds one edit, not null.");
        }
        catch (JsonException error)
        {
            problem = WireProblem.Of(error);
        }
        catch (NotSupportedException)
        {
            problem = new WireProblem(null, null, $"The line does not say which edit it is.", $"Give it \"{EditNames.Property}\" with one of the names in docs/edits.md.");
        }
        return null;
    }
}
