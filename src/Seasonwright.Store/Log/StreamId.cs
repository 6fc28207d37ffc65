namespace Seasonwright.Store.Log;

/// <summary>Names one stream of the log within its club. Once removed it is never used again.</summary>
public readonly record struct StreamId(Guid Value)
{
    public override string ToString() => Value.ToString("D");
}
