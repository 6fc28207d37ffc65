using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Strength;

/// <summary>A bar that plates go on.</summary>
/// <remarks>20 and 15 kg: IWF Technical and Competition Rules; 45 lb: common practice, from memory.</remarks>
public sealed record Bar(Weight Weight)
{
    public static Bar Men { get; } = new(new Weight(20));

    public static Bar Women { get; } = new(new Weight(15));

    public static Bar Pounds { get; } = new(new Weight(45, MassUnit.Pound));
}
