using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>Emphasis and test days of a plan.</summary>
/// <param name="Levels">For each week the exposures of each quality, 0 to 3, in the order of <see cref="Core.Setups.QualityKind"/>; prevention and the coach's own are not among them.</param>
/// <param name="Tests">Days on which the squad is tested, in order.</param>
/// <param name="Value">What it is worth, in units: thousandths of a point of value; for one structure and its loads only.</param>
/// <param name="Bound">No emphasis and tests for them are worth more.</param>
/// <param name="IsProven">Whether the search ended by itself and not at the limit of its work.</param>
/// <param name="Short">What could not be kept, in order of weeks; empty for most seasons.</param>
public sealed record EmphasisPlan(ValueList<ValueList<int>> Levels, ValueList<DateOnly> Tests, long Value, long Bound, bool IsProven, ValueList<Breach> Short)
{
    /// <summary>Test days that stand and have to give way, in order.</summary>
    public ValueList<MovedTest> Moved { get; init; } = ValueList<MovedTest>.Empty;

    /// <summary>No emphasis yet, and no tests.</summary>
    public static EmphasisPlan None(Problem problem) => new(problem.Weeks.Select(_ => Enumerable.Repeat(0, ExposureTable.Qualities).ToValueList()).ToValueList(), [], 0, 0, false, []);
}
