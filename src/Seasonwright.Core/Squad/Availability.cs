namespace Seasonwright.Core.Squad;

/// <summary>Full, modified by restrictions, or out. What is full or out has no restrictions beside it.</summary>
public sealed record Availability
{
    private Availability(AvailabilityState state, Restrictions restrictions) => (State, Restrictions) = (state, restrictions);

    public static Availability Full { get; } = new(AvailabilityState.Full, Restrictions.None);

    public static Availability Out { get; } = new(AvailabilityState.Out, Restrictions.None);

    public AvailabilityState State { get; }

    public Restrictions Restrictions { get; }

    /// <summary>Modified, also without a restriction named: then nothing is known but that somebody must be asked.</summary>
    /// <exception cref="ArgumentException">Nothing would be left to train: that is "out".</exception>
    public static Availability Modified(Restrictions restrictions) => restrictions.LeavesNothing
        ? throw new ArgumentException("Upper body only and lower body only leave nothing: that is \"out\".", nameof(restrictions))
        : new(AvailabilityState.Modified, restrictions);

    /// <summary>Both hold, the tighter of the two in everything. Where nothing is left to train, out.</summary>
    public Availability And(Availability other)
    {
        if (State == AvailabilityState.Full) return other;
        if (other.State == AvailabilityState.Full) return this;
        if (State == AvailabilityState.Out || other.State == AvailabilityState.Out) return Out;
        var both = Restrictions.And(other.Restrictions);
        return both.LeavesNothing ? Out : Modified(both);
    }

    /// <summary>Whether this allows nothing that the other forbids.</summary>
    public bool IsAtLeastAsTightAs(Availability other) => And(other) == this;
}
