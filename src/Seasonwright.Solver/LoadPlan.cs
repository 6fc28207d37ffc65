using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>The loads of a structure's weeks: kinds, phases and blocks are the structure's.</summary>
/// <param name="Points">The whole week's load, one a week.</param>
/// <param name="Value">What it is worth, in units: thousandths of a point of value; for loads of one structure only.</param>
/// <param name="Bound">No loads of this structure are worth more.</param>
/// <param name="IsProven">Whether the search ended by itself, with a gap within its limit, and not at the limit of its work.</param>
/// <param name="Short">What the loads could not keep, in order of weeks; empty for most seasons.</param>
public sealed record LoadPlan(ValueList<int> Points, long Value, long Bound, bool IsProven, ValueList<Breach> Short)
{
    /// <summary>The loads that a structure was found with: on a grid, with nothing said of better ones.</summary>
    public static LoadPlan Of(Structure structure) => new(structure.Weeks.Select(week => week.Points).ToValueList(), 0, 0, false, []);

    /// <summary>How far from the best the loads may be, as a share of the bound; 0 for the best there are.</summary>
    public double Gap => Bound == 0 ? 0 : Math.Max(0, (double)(Bound - Value) / Math.Max(1, Math.Abs(Bound)));
}
