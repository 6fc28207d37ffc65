namespace Seasonwright.Core.Strength;

/// <summary>A bar as it is loaded, in the unit of its plates.</summary>
/// <param name="Target">What was asked for.</param>
/// <param name="Total">Bar, collars and plates of both sides.</param>
/// <param name="PerSide">Plates of one side, heaviest first; as few as there can be.</param>
public sealed record Loading(decimal Target, decimal Total, ValueList<decimal> PerSide);
