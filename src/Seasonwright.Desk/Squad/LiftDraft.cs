using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Desk.Squad;

/// <summary>A tested set as it is told.</summary>
/// <param name="Exercise">Null where none of the team's was meant.</param>
/// <param name="Amount">Where the body is lifted as well, what hangs on it: 0 for nothing.</param>
/// <param name="Repetitions">Until none was left; null where the set was done for its velocity.</param>
/// <param name="Velocity">Metres a second of the fastest repetition; null where none was measured.</param>
public sealed record LiftDraft(ExerciseId? Exercise, DateOnly Day, decimal Amount, MassUnit Unit, int? Repetitions, decimal? Velocity = null);
