namespace Seasonwright.Core.Facts;

/// <summary>One place and what it held before and holds after; null means nothing.</summary>
public sealed record Change(Key Key, object? Before, object? After)
{
    public Change Inverse => new(Key, After, Before);

    // The compiler's would print the inverse, whose inverse has one too.
    public override string ToString() => $"{Key}: {Before ?? "nothing"} -> {After ?? "nothing"}";
}
