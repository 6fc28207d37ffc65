using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>What a phase or block is called: the coach's own name, or the kind's where there is none.</summary>
public static class RunWords
{
    public static string Of(Phase phase) => phase.Name ?? Sentences.Say($"phase.{phase.Kind}");

    public static string Of(Block block) => block.Name ?? Sentences.Say($"block.{block.Kind}");

    /// <summary>A name as typed: an empty one is none.</summary>
    internal static string? NameOrNone(string? typed) => string.IsNullOrWhiteSpace(typed) ? null : typed.Trim();
}
