using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>What a rule says about one place it looked at: it is fine, it cannot be told, or it is a breach.</summary>
internal abstract record Look(Place Place);

/// <summary>Within the rule.</summary>
internal sealed record Fine(Place Place) : Look(Place);

/// <summary>Not enough is known to judge: never a "fine".</summary>
/// <param name="Missing">Id of the sentence that says what is missing.</param>
internal sealed record TooLittle(Place Place, string Missing) : Look(Place);

/// <summary>Beyond a limit.</summary>
/// <param name="Code">Which of the rule's sentences says it.</param>
/// <param name="Value">What was found.</param>
/// <param name="Limit">What it should not pass.</param>
internal sealed record Breach(Place Place, string Code, Severity Severity, decimal Value, decimal Limit) : Look(Place)
{
    /// <summary>The limit, by name: what a team that goes its own way would change. Empty where no single figure stands for it.</summary>
    public string Figure { get; init; } = "";

    /// <summary>The numbers and names the sentence takes.</summary>
    public ValueList<object?> Numbers { get; init; } = ValueList<object?>.Empty;

    /// <summary>The groups it is about, in words; null where it is about everyone.</summary>
    public string? Whose { get; init; }

    /// <summary>It stands on matches and events alone, whatever is painted.</summary>
    public bool IsForced { get; init; }

    /// <summary>Edits that mend it; empty where none is known.</summary>
    public ValueList<SeasonEdit> Remedy { get; init; } = ValueList<SeasonEdit>.Empty;

    /// <summary>How far beyond the first limit of its kind, where <see cref="Limit"/> may be a harder one; null where there is only one.</summary>
    public decimal? Beyond { get; init; }

    /// <summary>How far beyond the first limit: it grows with the breach, whatever that is called.</summary>
    public decimal Size => Beyond ?? Math.Abs(Value - Limit);

    /// <summary>How far beyond the limit as a share of it, so that breaches of different rules can be put in order.</summary>
    public decimal Weight => WeightOf(Value, Limit);

    public static decimal WeightOf(decimal value, decimal limit) => limit == 0 ? Math.Abs(value) : Math.Abs(value - limit) / Math.Abs(limit);
}
