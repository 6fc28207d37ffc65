using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>A match as the engine reads it.</summary>
/// <param name="Day">0 to 6 from the week start; in a short first week too, so that its last day is always 6. Of a window, its first day.</param>
/// <param name="Kind">Friendly, regular or key.</param>
/// <param name="Au">What it loads, warm-up included, in AU; 0 for a window that runs on into another week.</param>
/// <param name="Date">The venue's date; of a window, its first day.</param>
public sealed record PlannedMatch(MatchId Id, int Day, DateOnly Date, Importance Kind, int Au)
{
    public bool IsOfficial => Kind != Importance.Friendly;

    public bool IsKey => Kind == Importance.Key;
}
