using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>The first shape of a plan: phases, kinds, blocks and first loads. The best of all that keep the conditions, on a grid of loads.</summary>
/// <param name="Value">What it is worth, in thousandths of a point of value; comparable between structures of one problem only.</param>
/// <param name="Fixed">The part of its value that loads do not change; with what loads are worth, structures compare after their loads were set.</param>
/// <param name="Broken">What it goes against, in order of weeks; without a clash only what settled weeks alone go against, which no plan can mend.</param>
public sealed record Structure(ValueList<StructureWeek> Weeks, long Value, long Fixed, ValueList<Breach> Broken);
