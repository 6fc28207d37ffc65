using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>
/// All that is asked of one move from one stand: conditions on the load, each from a least to a most, and those that the move itself
/// goes against. The one table of conditions: who refuses and who pays both read it here.
/// </summary>
internal sealed class Demands(Problem problem, Relaxed relaxed)
{
    /// <summary>The rules hold a lighter week against the mean of the weeks before; the last of them is known here. A block rises, so the mean lies below it; towards a match it may lie above. So much is left of the ends, per mille.</summary>
    private const int MeanFromLast = 50;

    /// <summary>Levels lie on a grid of three points; so far beyond a limit of change counts as within here. Loads are put within it afterwards.</summary>
    private const int Tolerance = 16;

    /// <summary>Loading weeks in a row in the competition, where the rule allows more.</summary>
    private const int LongestRunInCompetition = 6;

    private readonly List<Bound> loads = [];
    private readonly List<(Condition Condition, int Amount)> broken = [], given = [];

    /// <summary>Conditions on the load, in a fixed order.</summary>
    public IReadOnlyList<Bound> Loads => loads;

    /// <summary>Conditions that the move goes against whatever its load, and by how many weeks.</summary>
    public IReadOnlyList<(Condition Condition, int Amount)> Broken => broken;

    /// <summary>The same, where settled weeks alone go against it: told, and no reason to refuse the move.</summary>
    public IReadOnlyList<(Condition Condition, int Amount)> Given => given;

    /// <summary>The range of the move's kind, in points; of a load that is given, that load.</summary>
    public Limits.Range Range { get; private set; }

    public Ceiling? Ceiling { get; private set; }

    /// <summary>The training level reached, in tenths of a point: without the match of a normal week.</summary>
    public int Training { get; private set; }

    /// <summary>Loading weeks in the run with this one.</summary>
    public int Run { get; private set; }

    public void Judge(WeekFacts facts, Stand from, Move move)
    {
        loads.Clear();
        broken.Clear();
        given.Clear();
        var limits = problem.Limits;
        Ceiling = Solver.Ceiling.Of(limits, facts, from, move.Phase);
        Range = KindTable.Week(problem, facts.Week, move.Kind, move.Variant, move.Phase);
        // What is settled is a fact, whatever its kind holds elsewhere; what leads up to it is asked all the same.
        if (facts.Week is { IsSettled: true, Lock.Points: { } settled }) Range = facts.IsGiven ? new(settled, settled) : new(Math.Min(Range.Least, settled), Math.Max(Range.Most, settled));
        // Two matches tire like a week of training: in the competition they count, though no week of them is refused for it.
        Run = from.Mode.Run() + (move.Kind is WeekKind.Building or WeekKind.Competition or WeekKind.Overload && !facts.IsCongested || move.Kind == WeekKind.Congested && facts.IsCompetition ? 1 : 0);
        var match = facts.MatchBefore;
        if (facts.IsCompetition) match = Math.Max(match, problem.OneMatch);
        // What preparation reached is no measure of a week with a match.
        var reached = facts.IsCompetition && from.Reached > KindTable.MostInCompetition ? Guide.HardestInCompetition : from.Reached;
        Training = 10 * Math.Max(0, reached - match);
        if (facts.Week.Index < problem.FirstOpen) return;
        Phases(facts, from, move);
        Places(facts, from, move);
        Sizes(facts, from, move);
        Locks(facts, move);
    }

    private void Phases(WeekFacts facts, Stand from, Move move)
    {
        if (facts.Cycle is null) return;
        var (lengths, isNew) = (facts.Lengths, facts.IsCycleStart);
        if (facts.IsPreparation && Order(move.Phase) >= 0)
        {
            if (isNew || move.Phase != from.Phase) Left(facts, from, Order(move.Phase));
            var weeksIn = (isNew || move.Phase != from.Phase ? 0 : from.WeeksIn) + (facts.Week.IsBreak ? 0 : 1);
            if (!facts.Week.IsBreak && weeksIn > lengths.Of(move.Phase).Most && !(facts.Week.StandingPhase == move.Phase && lengths.Of(move.Phase).Most == 0)) Break(facts, Longest(move.Phase), 1);
        }
        else if (facts.IsCompetition && facts.Week.Index == facts.Cycle.First) Left(facts, from, Order(PhaseKind.PreCompetition) + 1);
    }

    /// <summary>Phases that were left too early or passed over on the way to another, by their order.</summary>
    private void Left(WeekFacts facts, Stand from, int to)
    {
        // Of a preparation that is under way or begins with settled weeks nobody asks how long its phases were at least.
        if (problem.Weeks[facts.Cycle!.Start].IsSettled || facts.Cycle.Start < problem.FirstOpen) return;
        var order = facts.IsCycleStart ? -1 : Order(from.Phase);
        for (var left = Math.Max(0, order); left < to; left++)
        {
            var phase = (PhaseKind)((left + 5) % 6);
            var missing = facts.Lengths.Of(phase).Least - (left == order ? from.WeeksIn : 0);
            if (missing > 0) Break(facts, Shortest(phase), missing);
        }
    }

    private void Places(WeekFacts facts, Stand from, Move move)
    {
        var isLoading = move.Kind.IsLoading();
        if (from.Mode == Mode.Start && facts.IsPreparation && !facts.Week.IsBreak && !facts.Week.IsReduced && move.Kind != WeekKind.Introductory) Break(facts, Condition.IntroductoryFirst, 1);
        if (NeedsWeekBack(facts, from, move.Phase) && !facts.Week.IsReduced && move.Kind is not (WeekKind.ReEntry or WeekKind.Introductory or WeekKind.Transition)) Break(facts, Condition.WeekBack, 1);
        if (facts.Taper != Variant.None ? move.Kind != WeekKind.Taper || move.Variant != facts.Taper : move.Kind == WeekKind.Taper) Break(facts, Condition.Taper, 1);
        if (isLoading && !facts.IsHold && Run > RunLimit(facts)) Break(facts, Condition.RunLimit, 1);
        if (move.Kind == WeekKind.Unloading && !(from.Mode == Mode.Overload || from.Mode.IsLoad() && facts.Before is { } before && (before.IsHold ? before.LoadsCongested : from.Mode.Run() > 0))) Break(facts, Condition.UnloadingAfterLoading, 1);
        if (move.Kind == WeekKind.Overload)
        {
            var isThere = move.Phase is PhaseKind.GeneralPreparation or PhaseKind.SpecificPreparation && facts.Before is { IsHold: false } && from.Mode.IsLoad() && from.Mode.Run() is 1 or 2;
            if (!isThere) Break(facts, Condition.OverloadInItsPlace, 1);
        }
        if (from.Mode == Mode.Overload && isLoading && !facts.IsHold) Break(facts, Condition.OverloadInItsPlace, 1);
    }

    private void Sizes(WeekFacts facts, Stand from, Move move)
    {
        var (limits, level, match) = (problem.Limits, 10 * from.Reached, 10 * facts.Week.MatchPoints);
        if (Ceiling is { } ceiling) Most(facts, Condition.ReEntry, ceiling.With(facts.Week));
        else if (!facts.IsHold && move.Kind is WeekKind.Building or WeekKind.Competition or WeekKind.Overload || move.Kind == WeekKind.Introductory)
        {
            Most(facts, Condition.Ramp, level + Math.Min(10 * limits.RampPoints, level * limits.RampShare / 1000) + Tolerance);
            if (facts.Before is { LoadsCongested: true } before && from.Mode.IsLoad())
                Most(facts, Condition.Ramp, 10 * (KindTable.Week(problem, before.Week, WeekKind.Congested, Variant.None, from.Phase).Least + limits.RampPoints) + Tolerance);
        }
        switch (move.Kind)
        {
            case WeekKind.Unloading:
                Share(facts, Condition.UnloadingSize, match, facts.IsCompetition ? limits.UnloadingInCompetition : limits.Unloading, 0);
                break;
            case WeekKind.Taper:
                Share(facts, Condition.TaperSize, match, move.Variant is Variant.Short or Variant.BeforeMany ? limits.ShortTaper : limits.FullTaper, facts.IsCongested ? null : MeanFromLast);
                break;
            case WeekKind.Building or WeekKind.Competition when from.Mode == Mode.ReEntry && !facts.IsHold && facts.Before is { IsHold: false }:
                Least(facts, Condition.RisingBack, level - Tolerance);
                break;
            case WeekKind.Building or WeekKind.Overload when facts.IsPreparation && !facts.IsHold:
                if (from.Mode.IsLoad() && from.Mode.Run() > 0 && facts.Before is { IsHold: false } && from.Phase == move.Phase && (move.Kind == WeekKind.Overload || !facts.IsLastBeforeCompetition))
                    Least(facts, Condition.Progression, level + 10 * (move.Kind == WeekKind.Overload ? Comparison.StepToOverload : Comparison.Step) - Tolerance);
                else if (from.Mode is Mode.Unloading or Mode.Intro1 or Mode.Intro2) Least(facts, Condition.NewBlock, level * Comparison.NewBlock / 1000 - Tolerance);
                break;
            case WeekKind.Competition when FollowsCompetitionWeek(facts, from):
                Least(facts, Condition.NoAbruptDrop, level - 10 * Comparison.Fall - Tolerance);
                break;
        }
        if (facts.Week.Matches.Count == 2 && facts.HasOneMatchWeekBefore && move.Kind is WeekKind.Congested or WeekKind.Taper or WeekKind.Reduced)
            Most(facts, Condition.LightCongestion, match + Training * limits.CongestedShare / 1000);
        Most(facts, Condition.LargestWeek, 10 * problem.LargestWeek);
        if (problem.MostTraining(move.Phase) is var training and < int.MaxValue) Most(facts, Condition.TrainingTime, 10 * (facts.Week.MatchPoints + training));
    }

    private void Locks(WeekFacts facts, Move move)
    {
        if (facts.Week.Lock is not { } locked) return;
        if (locked.Phase is { } phase && phase != move.Phase) Break(facts, Condition.LockedPhase, 1);
        if (locked.Kind is { } kind && !Fits(kind, move.Kind)) Break(facts, Condition.LockedKind, 1);
        if (locked.Points is { } points && !relaxed.Has(Condition.LockedLoad, facts.Week.Index)) loads.Add(new(Condition.LockedLoad, 10 * points, 10 * points));
    }

    /// <summary>Building, competition and congested say of a loading week how many matches it has, which the calendar does.</summary>
    private static bool Fits(WeekKind locked, WeekKind kind) => locked == kind || IsByCalendar(locked) && IsByCalendar(kind);

    public static bool IsByCalendar(WeekKind kind) => kind is WeekKind.Building or WeekKind.Competition or WeekKind.Congested;

    public static bool FollowsCompetitionWeek(WeekFacts facts, Stand from) =>
        facts.Before is { IsOneMatchWeek: true, IsHold: false } && from.Phase == PhaseKind.Competition && from.Mode.IsLoad() && from.Mode.Run() > 0;

    /// <summary>Whether the week must be a re-entry or introductory one.</summary>
    public static bool NeedsWeekBack(WeekFacts facts, Stand from, PhaseKind phase)
    {
        if (facts.Week.IsOff || phase == PhaseKind.Transition) return false;
        if (from.Mode == Mode.Transition) return true;
        if (facts.Back.Since == 0 || facts.Week.DaysOff > 0 && from.Mode != Mode.Start) return true;
        // At the season's start the second week may load already where the first was introductory.
        return facts.Back.Since == 1 && !(facts.Back.IsStart && from.Mode == Mode.Intro1);
    }

    private int RunLimit(WeekFacts facts) => facts.IsCompetition ? Math.Min(LongestRunInCompetition, problem.Limits.InSeasonWeeks) : problem.Limits.BuildingWeeks;

    /// <param name="left">Left at the lower end, per mille; null for no lower end.</param>
    private void Share(WeekFacts facts, Condition condition, int match, Limits.Range kept, int? left)
    {
        var most = Math.Max(kept.Least, kept.Most - MeanFromLast);
        Add(facts, condition, left is { } end ? match + Training * Math.Min(most, kept.Least + end) / 1000 : 0, match + Training * most / 1000);
    }

    private void Most(WeekFacts facts, Condition condition, int most) => Add(facts, condition, 0, most);

    private void Least(WeekFacts facts, Condition condition, int least) => Add(facts, condition, least, int.MaxValue);

    /// <summary>Where even the least of the kind is more than a condition allows, the calendar asks for it: then the least is within. So at the other end.</summary>
    private void Add(WeekFacts facts, Condition condition, int least, int most)
    {
        if (relaxed.Has(condition, facts.Week.Index)) return;
        var eased = relaxed.By(condition, facts.Week.Index);
        (least, most) = (Math.Max(0, least - eased), most > int.MaxValue - eased ? most : most + eased);
        var (low, high) = (Math.Min(least, 10 * Range.Most), Math.Max(most, 10 * Range.Least));
        loads.Add(new(condition, low, high, low < least || high > most));
    }

    private void Break(WeekFacts facts, Condition condition, int amount)
    {
        if (10 * amount > relaxed.By(condition, facts.Week.Index)) (IsGiven(facts, condition) ? given : broken).Add((condition, amount));
    }

    /// <summary>
    /// Whether settled weeks alone decide about a condition on a place. What a week is, and whether it is a taper, it decides itself.
    /// </summary>
    private static bool IsGiven(WeekFacts facts, Condition condition)
    {
        if (condition.IsAboutPhase) return facts is { IsGiven: true, Week.Lock.Phase: not null };
        if (condition.IsLock || facts.Week.Lock?.Kind is null) return false;
        return facts.IsGiven || facts.Week.IsSettled && (condition.IsDefinition || condition == Condition.Taper);
    }

    /// <summary>Transition, general, specific, pre-competition; what lies outside a preparation comes before them all.</summary>
    public static int Order(PhaseKind phase) => phase switch
    {
        PhaseKind.Transition => 0,
        PhaseKind.GeneralPreparation => 1,
        PhaseKind.SpecificPreparation => 2,
        PhaseKind.PreCompetition => 3,
        _ => -1,
    };

    private static Condition Shortest(PhaseKind phase) => phase switch
    {
        PhaseKind.Transition => Condition.ShortestTransition,
        PhaseKind.GeneralPreparation => Condition.ShortestGeneral,
        PhaseKind.SpecificPreparation => Condition.ShortestSpecific,
        _ => Condition.ShortestPreCompetition,
    };

    private static Condition Longest(PhaseKind phase) => phase switch
    {
        PhaseKind.Transition => Condition.LongestTransition,
        PhaseKind.GeneralPreparation => Condition.LongestGeneral,
        PhaseKind.SpecificPreparation => Condition.LongestSpecific,
        _ => Condition.LongestPreCompetition,
    };
}
