namespace Seasonwright.Core.Seasons;

/// <summary>The kinds of block. The coach may name a block freely; the kind stays beneath.</summary>
public enum BlockKind
{
    Introductory,
    Base,
    Build,
    Competition,
    Peak,
    ReEntry,
    Transition,
}

/// <summary>What a block (mesocycle) is: a run of loading weeks and the week that ends it.</summary>
/// <param name="Name">The coach's own name, or null for the kind's.</param>
public sealed record Block(BlockKind Kind, string? Name = null);

/// <summary>An unbroken run of weeks of one block. First and last week are inside.</summary>
/// <param name="LoadingWeeks">Weeks of the run whose kind loads.</param>
/// <param name="ClosingWeeks">Unloading or taper weeks of the run.</param>
public sealed record BlockRun(BlockId Id, Block Block, SeasonWeek First, SeasonWeek Last, int LoadingWeeks, int ClosingWeeks)
{
    /// <summary>"3:1", loading to closing weeks; empty while the kinds of its weeks say neither.</summary>
    public string Pattern => LoadingWeeks > 0 && ClosingWeeks > 0
        ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{LoadingWeeks}:{ClosingWeeks}")
        : "";
}
