using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Proposing;

/// <summary>What a run of the engine is asked: the season and the figures as they stood, and the wishes.</summary>
/// <param name="Plans">How many plans at most.</param>
public sealed record Asked(Season Season, Setup Setup, Wishes Wishes, int Plans)
{
    /// <summary>Another year, from what the season itself says. Weeks that began before today stay as they are.</summary>
    public static Asked ForPlan(Season season, Setup setup, DateOnly today, int plans) =>
        new(season, setup, Wishes.Of(season) with { From = today > season.Days?.First ? today : null }, plans);

    /// <summary>The plan that stands, repaired from a day on.</summary>
    /// <param name="stands">What is kept unless there is good reason: the published version, or the season itself where none is.</param>
    /// <param name="keepWeight">How dear every change is, per mille of usual.</param>
    public static Asked ForRepair(Season season, Setup setup, Season stands, DateOnly from, int keepWeight) =>
        new(season, setup, Wishes.Of(season).Repairing(stands, season, from, keepWeight), 1) { Agreed = stands };

    /// <summary>Of a repair the plan as it was agreed, against which its changes are told; null for a plan made anew.</summary>
    public Season? Agreed { get; private init; }

    /// <summary>Whether the plan that stands is repaired, not the year proposed anew.</summary>
    public bool IsRepair => Agreed is not null;

    /// <summary>The same, with something not asked for.</summary>
    public Asked Without(Solver.Condition condition, int? week) => this with { Wishes = Wishes with { LeftOut = Wishes.LeftOut.With(condition, week) } };

    /// <summary>Whether the season and its team's figures are still those it was asked for.</summary>
    public bool IsOf(Season season, Setup setup) => ReferenceEquals(season.Facts, Season.Facts) && ReferenceEquals(setup.Facts, Setup.Facts);
}
