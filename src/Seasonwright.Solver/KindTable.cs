using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What weeks of a kind hold, in points: the assumed practice as a share of a usual week's, and the range of what is ours. Working defaults: common practice, no source.</summary>
public static class KindTable
{
    /// <summary>Practice where none is entered takes at most this share of the training, per mille.</summary>
    public const int MostOfTraining = 720;

    /// <summary>A competition week holds its match and so much at least.</summary>
    private const int BesideAMatch = 14;

    /// <summary>A building week holds so much at least.</summary>
    private const int LeastBuilding = 30;

    /// <summary>The most a break may hold.</summary>
    private const int MostOfBreak = 30;

    /// <summary>The most a week of the competition with one match or none may hold.</summary>
    internal const int MostInCompetition = 85;

    /// <summary>Caps of the whole week.</summary>
    private const int MostBuilding = 112, MostOverload = 120, MostPreCompetitionMatch = 95;

    /// <summary>Assumed practice as a share of a usual week's, per mille. Of a reduced or lost week what its events leave.</summary>
    public static int PracticeShare(PlannedWeek week, WeekKind kind, Variant variant = Variant.None) =>
        kind == WeekKind.Reduced || week.IsLost ? Share(week, kind, variant) * Math.Min(100, week.Availability) / 100 : Share(week, kind, variant);

    private static int Share(PlannedWeek week, WeekKind kind, Variant variant)
    {
        var matches = week.Matches.Count;
        if (matches > 1 && kind is WeekKind.Congested or WeekKind.Taper or WeekKind.Unloading or WeekKind.Reduced or WeekKind.ReEntry)
            return matches switch { 2 => 400, 3 => 200, _ => 80 };
        return kind switch
        {
            WeekKind.Introductory => variant == Variant.First ? 650 : 850,
            WeekKind.Building => matches > 0 ? 800 : 1000,
            WeekKind.Overload => 1000,
            WeekKind.Unloading => matches > 0 ? 680 : 720,
            WeekKind.Taper => variant switch { Variant.FullEarlier => 560, Variant.FullLast => 470, _ => 640 },
            WeekKind.Competition => 800,
            WeekKind.Congested => 400,
            WeekKind.ReEntry => variant switch { Variant.First => 450, Variant.Second => 630, _ => 720 },
            WeekKind.Reduced => matches > 0 ? 800 : 1000,
            _ => 0,
        };
    }

    /// <summary>The practice of a week, in points: what is entered, else the kind's share of the usual week, at most 72 % of the training.</summary>
    /// <param name="training">The week's load without its matches, in points.</param>
    public static int Practice(Problem problem, PlannedWeek week, WeekKind kind, Variant variant, int training) =>
        week.PracticePoints ?? Math.Max(0, Math.Min(problem.UsualPractice * PracticeShare(week, kind, variant) * week.ShareOfDays, MostOfTraining * 100 * training) / 100_000);

    /// <summary>The range of what is ours, in points.</summary>
    public static Limits.Range Ours(PlannedWeek week, WeekKind kind, Variant variant, PhaseKind phase) => kind switch
    {
        not (WeekKind.Break or WeekKind.Transition) when week.IsLost => new(0, 3),
        WeekKind.Introductory => new(5, 32),
        WeekKind.Building => phase == PhaseKind.Competition ? new(8, 39) : new(8, 60),
        WeekKind.Overload => new(20, 68),
        WeekKind.Unloading => new(3, 26),
        WeekKind.Taper or WeekKind.Congested when week.Matches.Count > 2 => new(0, 4),
        // What its size leaves of the 60 points of a building week, at most.
        WeekKind.Taper => week.Matches.Count > 1 ? new(2, 9) : new(3, variant switch { Variant.FullEarlier => 35, Variant.FullLast => 28, _ => 48 }),
        WeekKind.Competition => new(5, 22),
        WeekKind.Congested => new(2, 9),
        WeekKind.ReEntry => new(3, 30),
        WeekKind.Reduced => new(3, 16),
        WeekKind.Transition => new(12, 30),
        // Nothing is planned for a break; what the coach fixed is kept.
        _ => new(0, week.Lock?.Points is null ? 0 : MostOfBreak),
    };

    /// <summary>
    /// The range of the whole week, in whole points: from the matches, half of the assumed practice and the least that is ours to the
    /// matches, all of it and the most that is ours, under the caps. Entered practices are a fact: the week holds them and its matches.
    /// </summary>
    public static Limits.Range Week(Problem problem, PlannedWeek week, WeekKind kind, Variant variant, PhaseKind phase)
    {
        var ours = Ours(week, kind, variant, phase);
        var (assumed, entered) = (problem.UsualPractice * PracticeShare(week, kind, variant), week.PracticePoints);
        var least = entered is { } held ? week.MatchPoints + held : LeastOf(week, kind, assumed, ours.Least);
        var most = Math.Min(week.MatchPoints + Scaled(week, (1000 * entered ?? assumed) + 1000 * ours.Most), MostOf(week, kind, phase));
        if (entered is not null) most = Math.Max(most, least + ours.Least);
        // What stands may stay, whatever its kind holds elsewhere.
        if (week.Standing(kind) is { } stands) (least, most) = (entered is null ? Math.Min(least, stands) : least, Math.Max(most, stands));
        return new(least, Math.Max(least, most));
    }

    private static int LeastOf(PlannedWeek week, WeekKind kind, int assumed, int ours) => kind switch
    {
        WeekKind.Competition => week.MatchPoints + BesideAMatch,
        WeekKind.Building => Math.Max(week.MatchPoints, Scaled(week, 1000 * LeastBuilding)),
        _ => week.MatchPoints + Scaled(week, assumed / 2 + 1000 * ours),
    };

    private static int MostOf(PlannedWeek week, WeekKind kind, PhaseKind phase)
    {
        if (phase == PhaseKind.PreCompetition && week.Matches.Count > 0) return MostPreCompetitionMatch;
        if (phase == PhaseKind.Competition && week.Matches.Count < 2) return MostInCompetition;
        return kind switch { WeekKind.Building => MostBuilding, WeekKind.Overload => MostOverload, _ => int.MaxValue };
    }

    /// <summary>Thousandths of points over the days of a short first week, rounded to whole points.</summary>
    private static int Scaled(PlannedWeek week, int thousandths) => (int)((long)thousandths * week.ShareOfDays / 100 + 500) / 1000;
}
