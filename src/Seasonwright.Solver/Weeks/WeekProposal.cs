using Seasonwright.Core;
using Seasonwright.Core.Loads;

namespace Seasonwright.Solver;

/// <summary>A week laid out: sessions of ours around matches and practices.</summary>
/// <param name="Sessions">Ours, those for test days among them, by day and slot; given ones are in the problem.</param>
/// <param name="Reasons">For each of them why it lies where it does.</param>
/// <param name="Asked">What practices are asked to hold.</param>
/// <param name="Cost">What falls short of the wishes, in thousandths; the least that was found.</param>
/// <param name="Bound">No layout within the conditions costs less.</param>
/// <param name="IsProven">None is better; else the search ended at its limit of work.</param>
/// <param name="Short">What falls short and what is assumed, in words, with the condition.</param>
public sealed record WeekProposal(
    WeekProblem Problem,
    ValueList<WeekSession> Sessions,
    ValueList<ValueList<WeekReason>> Reasons,
    ValueList<AskedOfPractice> Asked,
    long Cost,
    long Bound,
    bool IsProven,
    ValueList<WeekReason> Short)
{
    /// <summary>How much better the best layout could be at most, as a share of this one's cost.</summary>
    public double Gap => Cost == 0 ? 0 : (Cost - Bound) / (double)Cost;

    /// <summary>Ours, given and proposed.</summary>
    public IEnumerable<WeekSession> All => Problem.Given.Where(session => session.Day >= 0 && session.Day < Problem.Days.Count).Concat(Sessions);

    /// <summary>AU of a day by owner.</summary>
    public (int Match, int Practice, int Ours) LoadOf(WeekDay day) => (day.MatchAu,
        All.Where(session => session.Day == day.Index && !session.IsOurs).Sum(session => session.Au),
        All.Where(session => session.Day == day.Index && session.IsOurs).Sum(session => session.Au));

    /// <summary>Of the week's days; null where it is not defined.</summary>
    public double? MonotonyOfDays => Problem.Days.Count < 2 ? null : Monotony.Of([.. Problem.Days.Select(day => LoadOf(day)).Select(load => (double)(load.Match + load.Practice + load.Ours))]);
}
