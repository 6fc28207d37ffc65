using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What a week may become.</summary>
internal readonly record struct Move(PhaseKind Phase, WeekKind Kind, Variant Variant = Variant.None);
