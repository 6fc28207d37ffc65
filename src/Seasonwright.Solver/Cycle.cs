namespace Seasonwright.Solver;

/// <summary>A competition period with the preparation before it. Weeks by index, both ends inside.</summary>
/// <param name="Start">The first week of its preparation: the week after the period before, or the season's first.</param>
/// <param name="First">The week of the first official match; <paramref name="Last"/> + 1 of a season without official matches.</param>
/// <param name="Last">The week of the last official match; without any, the season's last week.</param>
public sealed record Cycle(int Start, int First, int Last)
{
    /// <summary>Weeks before the first official match, breaks included.</summary>
    public int Preparation => First - Start;
}
