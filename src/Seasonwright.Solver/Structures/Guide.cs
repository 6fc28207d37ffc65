using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>The load that a coach would expect of a week, in tenths of a point: of one that stands what stands. Working defaults: common practice, no source.</summary>
internal static class Guide
{
    /// <summary>First and second introductory week, by start: off, home, kept.</summary>
    private static readonly (int First, int Second)[] Introductory = [(420, 580), (460, 620), (600, 660)];

    /// <summary>Competition weeks by their place in the run.</summary>
    private static readonly int[] Competition = [680, 720, 760, 720, 700, 660];

    /// <summary>Points of the hardest usual competition week.</summary>
    public const int HardestInCompetition = 76;

    private const int MatchFreeInCompetition = 750, Transition = 220, BesideReduced = 90, BesideCongested = 40, BesideCrowded = 10;

    /// <summary>The last and the last but one week before the competition.</summary>
    private const int MostInLast = 880, MostInLastButOne = 960;

    /// <param name="run">Loading weeks in the run, this one counted.</param>
    /// <param name="training">The training level reached, in tenths of a point.</param>
    /// <param name="ceiling">What a week back is held to; null for others.</param>
    /// <param name="least">The least a week of its kind holds, in points.</param>
    public static int Of(Problem problem, WeekFacts facts, Move move, int run, int training, Ceiling? ceiling, int least)
    {
        if (problem.KeepWeight > 0 && facts.Week.Standing(move.Kind) is { } stands) return 10 * stands;
        var match = 10 * facts.Week.MatchPoints;
        var guide = move.Kind switch
        {
            WeekKind.Introductory when ceiling is { IsOfLevel: true } back => 95 * back.Tenths / 100,
            WeekKind.Introductory => (move.Variant == Variant.First ? Start(problem, facts).First : Start(problem, facts).Second) * facts.Week.ShareOfDays / 100,
            WeekKind.Building => !facts.IsPreparation ? MatchFreeInCompetition : Envelope(problem, facts) * (run switch { 1 => 94, 2 => 100, _ => 105 }) / 100,
            WeekKind.Overload => (facts.IsPreparation ? Envelope(problem, facts) * 105 / 100 : MatchFreeInCompetition) + 50,
            WeekKind.Competition => Competition[Math.Clamp(run, 1, Competition.Length) - 1],
            WeekKind.Congested or WeekKind.Taper or WeekKind.Reduced when facts.IsCongested => 10 * least + (facts.Week.Matches.Count > 2 ? BesideCrowded : BesideCongested),
            WeekKind.Unloading => match + training * (facts.IsCompetition ? 79 : 60) / 100,
            WeekKind.Taper => match + training * (move.Variant switch { Variant.FullEarlier => 56, Variant.FullLast => 47, Variant.BeforeMany => 75, _ => 73 }) / 100,
            // Back without a match the squad trains no more than beside one before.
            WeekKind.ReEntry => Math.Min(95 * (ceiling?.Tenths ?? 700) / 100, ceiling is { IsOfLevel: true } && facts.Week.Matches.Count == 0 ? Math.Max(10 * least, training) : int.MaxValue),
            WeekKind.Reduced => match + BesideReduced + (facts.Week.PracticePoints is { } entered ? 10 * entered : problem.UsualPractice * KindTable.PracticeShare(facts.Week, WeekKind.Reduced) / 100),
            WeekKind.Transition => match + Transition,
            _ => match,
        };
        return Math.Min(guide, 10 * problem.LargestWeek);
    }

    /// <summary>What a building week rises to from the third week of preparation on (the second where training was kept up, at once in a later one without a transition).</summary>
    private static int Envelope(Problem problem, WeekFacts facts)
    {
        var isFirst = facts.Cycle!.Start == 0;
        var kept = isFirst && problem.Start == StartLevel.Kept;
        var from = isFirst ? kept ? 1 : 2 : facts.HasTransition ? 4 : 0;
        var slope = problem.Boldness switch { Boldness.Careful => 40, Boldness.Bold => 70, _ => 55 };
        var top = facts.TrainingWeeks switch { >= 8 => 1040, >= 6 => 980, _ => 920 };
        var rising = (isFirst ? kept ? 720 : 700 : 740) + slope * Math.Max(0, facts.Trained - from);
        var most = (facts.Cycle.First - facts.Week.Index) switch { _ when facts.Cycle.First > facts.Cycle.Last => top, 1 => Math.Min(top, MostInLast), 2 => Math.Min(top, MostInLastButOne), _ => top };
        return Math.Min(rising, most);
    }

    private static (int First, int Second) Start(Problem problem, WeekFacts facts) =>
        Introductory[(int)(facts.Cycle is { Start: > 0 } ? StartLevel.Home : problem.Start)];
}
