namespace Seasonwright.Core.Facts;

/// <summary>One place and what it held before and holds after; null means nothing.</summary>
public sealed record Change(Key Key, object? Before, object? After)
{
    public Change Inverse => new(Key, After, Before);
}
