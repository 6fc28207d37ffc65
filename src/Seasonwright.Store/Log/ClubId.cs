namespace Seasonwright.Store.Log;

/// <summary>The club that owns a row; leads every key, so that many clubs can share one database later.</summary>
public readonly record struct ClubId(Guid Value)
{
    /// <summary>The one club of a data folder on a laptop. Never changes: it is in every key already written.</summary>
    public static ClubId Local { get; } = new(new Guid("0e5b1a70-0000-7000-8000-000000000001"));
}
