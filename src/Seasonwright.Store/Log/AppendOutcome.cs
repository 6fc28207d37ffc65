using System.Collections.Immutable;

namespace Seasonwright.Store.Log;

/// <summary>The answer to an <see cref="AppendRequest"/>.</summary>
public abstract record AppendOutcome
{
    private protected AppendOutcome() { }

    /// <summary>Durable: the entries outlive the process and the power.</summary>
    public sealed record Appended(ImmutableArray<LogEntry> Entries) : AppendOutcome;

    /// <summary>The gesture was appended before; these are its entries. Nothing was added.</summary>
    public sealed record AlreadyThere(ImmutableArray<LogEntry> Entries) : AppendOutcome;

    /// <summary>Others were faster. Nothing was added; decide again on top of these.</summary>
    /// <param name="Since">Every entry after the expected tail, by stream in the request's order, then by number.</param>
    public sealed record Behind(ImmutableArray<LogEntry> Since) : AppendOutcome;

    /// <summary>A stream was removed. Nothing was added.</summary>
    public sealed record Gone(Removal Removal) : AppendOutcome;
}
