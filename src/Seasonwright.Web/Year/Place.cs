namespace Seasonwright.Web.Year;

/// <summary>What the person looks at: the cursor's run, or one thing, or a thing to be made.</summary>
/// <param name="Track">Track of the cursor.</param>
/// <param name="First">First week, index from 0.</param>
/// <param name="Last">Last week, index from 0.</param>
/// <param name="Day">First day of the run.</param>
/// <param name="LastDay">Last day of the run.</param>
/// <param name="Item">"match/ID" and the like.</param>
/// <param name="Make">"match", "event", "test" or "note".</param>
public sealed record Place(string? Track, int First, int Last, DateOnly? Day, DateOnly? LastDay, string? Item, string? Make);
