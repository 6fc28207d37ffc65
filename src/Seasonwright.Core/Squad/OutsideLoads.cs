using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Squad;

/// <summary>What is done elsewhere in an absence, day by day.</summary>
/// <param name="Others">On each day that is not told apart; null while it is not known, which is not 0.</param>
/// <param name="Apart">The days told apart, the earliest first, each once.</param>
public sealed record OutsideLoads(OutsideLoad? Others, ValueList<OutsideDay> Apart)
{
    public static OutsideLoads Unknown { get; } = new(null, []);

    /// <summary>The same on each day.</summary>
    public static OutsideLoads Of(OutsideLoad? everyDay) => new(everyDay, []);

    /// <summary>As it was told of a day; null where nobody told.</summary>
    public OutsideLoad? On(DateOnly day) => Apart.FirstOrDefault(apart => apart.Day == day)?.Load ?? Others;
}
