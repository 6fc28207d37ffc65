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

    /// <exception cref="JsonException">The text is not an edit of this version.</exception>
    public static Edit ReadEdit(string json) => JsonSerializer.Deserialize<Edit>(json, WireOptions.Compact)!;

    /// <exception cref="JsonException">The text is not a step of this version.</exception>
    public static Step ReadStep(string json) => JsonSerializer.Deserialize<Step>(json, WireOptions.Compact)!;

    /// <exception cref="JsonException">The text is not a set of facts of this version.</exception>
    public static FactSet ReadFacts(string json) => JsonSerializer.Deserialize<FactSet>(json, WireOptions.Compact)!;
}
