using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>What says how hard a set is.</summary>
public enum EffortKind
{
    /// <summary>Nothing: as light as it needs to be.</summary>
    Free,

    /// <summary>Per cent of the most that can be lifted once.</summary>
    OfMax,

    /// <summary>Repetitions in reserve: that many more would have been possible.</summary>
    Reserve,

    /// <summary>Metres a second of the first repetitions.</summary>
    Velocity,

    /// <summary>Per cent of body mass.</summary>
    OfBodyMass,

    /// <summary>One weight for everyone.</summary>
    Fixed,
}

/// <summary>How hard a set is. Equal where its figures are, however they were typed.</summary>
public sealed record Effort
{
    /// <param name="amount">Per cent of the maximum 20 to 130, repetitions in reserve 0 to 10, metres a second 0.05 to 4, per cent of body mass 1 to 300; null for free and fixed.</param>
    /// <param name="weight">Of a fixed one.</param>
    /// <param name="stopLoss">Beside a velocity: the set ends where so many per cent of it are lost, 5 to 60.</param>
    public Effort(EffortKind kind, decimal? amount = null, Weight? weight = null, Percent? stopLoss = null) => (Kind, Amount, Weight, StopLoss) = (kind, amount, weight, stopLoss);

    public const int LeastStopLoss = 5, MostStopLoss = 60;

    public EffortKind Kind { get; init; }

    public decimal? Amount { get; init => field = value is { } known ? Plain.Of(known) : null; }

    public Weight? Weight { get; init; }

    public Percent? StopLoss { get; init; }

    public static Effort Free { get; } = new(EffortKind.Free);

    public static Effort OfMax(decimal percent) => new(EffortKind.OfMax, percent);

    public static Effort Reserve(decimal repetitions) => new(EffortKind.Reserve, repetitions);

    /// <summary>Least and most of its figure; null where its kind has none.</summary>
    public static (decimal Least, decimal Most)? BoundsOf(EffortKind kind) => kind switch
    {
        EffortKind.OfMax => (20, 130),
        EffortKind.Reserve => (0, 10),
        EffortKind.Velocity => (0.05m, 4),
        EffortKind.OfBodyMass => (1, 300),
        _ => null,
    };
}
