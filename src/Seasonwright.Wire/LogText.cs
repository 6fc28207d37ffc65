using System.Text.Json;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;

namespace Seasonwright.Wire;

/// <summary>Edits, steps and facts as the log keeps them. The version says which form they have; older forms are read for ever.</summary>
public static class LogText
{
    public const int Version = 1;

    public static string Of(Edit edit) => JsonSerializer.Serialize(edit, WireOptions.Compact);

    public static string Of(Step step) => JsonSerializer.Serialize(step, WireOptions.Compact);

    public static string Of(FactSet facts) => JsonSerializer.Serialize(facts, WireOptions.Compact);

    /// <summary>What stands for the edit where a step took an earlier one back or brought it back.</summary>
    public const string NoEdit = "null";

    /// <returns>The edit, or null for <see cref="NoEdit"/>.</returns>
    /// <exception cref="JsonException">The text is not an edit of this version.</exception>
    public static Edit? ReadEdit(string json) => JsonSerializer.Deserialize<Edit>(json, WireOptions.Compact);

    /// <summary>Whether a text of <see cref="Of(Edit)"/> holds an edit of this type. The name stands first, so the rest is not read.</summary>
    public static bool Is<TEdit>(string editJson)
        where TEdit : Edit => editJson.StartsWith($"{{\"{EditNames.Property}\":\"{EditNames.NameOf(typeof(TEdit))}\"", StringComparison.Ordinal);

    /// <exception cref="JsonException">The text is not a step of this version.</exception>
    public static Step ReadStep(string json) =>
        JsonSerializer.Deserialize<Step>(json, WireOptions.Compact) ?? throw new JsonException("The text is no step.");

    /// <returns>The facts, or null when the text is not a set of facts of this version.</returns>
    public static FactSet? TryReadFacts(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<FactSet>(json, WireOptions.Compact);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
