using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Strength;

/// <summary>Dumbbells of a rack, from the lightest up to the heaviest in even steps.</summary>
public sealed record DumbbellSteps
{
    /// <param name="from">Mass of the lightest, above 0.</param>
    /// <param name="to">No dumbbell is heavier; the heaviest is the last step up to it.</param>
    /// <exception cref="ArgumentOutOfRangeException">No mass, no step, or an end below the beginning.</exception>
    public DumbbellSteps(decimal from, decimal to, decimal step, MassUnit unit)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(from);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step);
        ArgumentOutOfRangeException.ThrowIfLessThan(to, from);
        (From, To, Step, Unit) = (from, from + decimal.Floor((to - from) / step) * step, step, unit);
    }

    public decimal From { get; }

    /// <summary>The heaviest that there is.</summary>
    public decimal To { get; }

    public decimal Step { get; }

    public MassUnit Unit { get; }

    /// <summary>The dumbbell that stands for a target in this unit; above the heaviest that is the heaviest. Null where the target is lighter than the lightest.</summary>
    public decimal? Load(decimal target, LoadRounding rounding)
    {
        if (target < From) return null;
        var below = Math.Min(To, From + decimal.Floor((target - From) / Step) * Step);
        return rounding == LoadRounding.Nearest && below < To && below + Step - target < target - below ? below + Step : below;
    }
}
