using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Setups;

/// <summary>How a team works out the maximum of an exercise.</summary>
/// <param name="Equation">By its name for scripts ("epley"); null for <see cref="UsualEquation"/>.</param>
/// <param name="Threshold">Metres a second of a single that can just be lifted, 0.05 to 1.5; null for the usual one of its pattern, where there is one.</param>
public sealed record Lift(string? Equation = null, decimal? Threshold = null)
{
    /// <summary>It gives the load itself for one repetition and lies near the textbook table up to ten; the choice is common practice, no source.</summary>
    public const string UsualEquation = "brzycki";

    public const decimal LeastThreshold = 0.05m, MostThreshold = 1.5m;

    public static Lift Usual { get; } = new();

    public decimal? Threshold { get; init => field = value is { } known ? Plain.Of(known) : null; } = Threshold is { } given ? Plain.Of(given) : null;
}
