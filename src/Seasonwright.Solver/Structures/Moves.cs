using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What a week may become after a stand, and where the plan stands then. Which of these a condition speaks against is not told here.</summary>
internal static class Moves
{
    private static readonly PhaseKind[] Preparation = [PhaseKind.Transition, PhaseKind.GeneralPreparation, PhaseKind.SpecificPreparation, PhaseKind.PreCompetition];

    /// <param name="all">Also those that only a search needs that pays for broken conditions or leaves the taper out.</param>
    public static void Of(Problem problem, WeekFacts facts, Stand from, bool all, List<Move> moves)
    {
        moves.Clear();
        if (facts.Week.Index < problem.FirstOpen && facts.Week.Lock?.Phase is { } past) Kinds(past);
        else if (facts.Cycle is null) Kinds(PhaseKind.Transition);
        else if (facts.IsCompetition)
        {
            Kinds(PhaseKind.Competition);
            // A pause too short to part two periods may still be called one.
            if (facts.Week is { IsBreak: true, Kept.Phase: PhaseKind.Transition }) Kinds(PhaseKind.Transition);
        }
        // Weeks off between two competition periods are no preparation yet.
        else if (facts is { IsCycleStart: true, Before: not null, Week: { IsBreak: true, Lock: null or { Phase: null or PhaseKind.Transition } } }) Kinds(PhaseKind.Transition);
        else
        {
            var order = facts.IsCycleStart ? -1 : Demands.Order(from.Phase);
            foreach (var phase in Preparation)
            {
                var place = Demands.Order(phase);
                if (place < order || place != order && facts.Lengths.Of(phase).Most == 0) continue;
                // Within a break the phase goes on.
                if (place != order && order >= 0 && facts.Week.IsBreak) continue;
                Kinds(phase);
            }
        }
        // A settled phase stands where the calendar or the order of phases would have another, and one that is kept to may.
        if (facts.Week.StandingPhase is { } stands && !moves.Exists(move => move.Phase == stands)) Kinds(stands);

        void Kinds(PhaseKind phase)
        {
            var week = facts.Week;
            // What was done was done.
            if (IsFact() && week.Lock?.Kind is { } done)
            {
                Add(done, VariantOf(done, phase));
                return;
            }
            if (week.IsBreak) Add(WeekKind.Break);
            else if (phase == PhaseKind.Transition) Add(WeekKind.Transition);
            else
            {
                if (facts.Taper != Variant.None) Add(WeekKind.Taper, facts.Taper);
                if (week.IsReduced)
                {
                    if (facts.Taper == Variant.None || all) Add(WeekKind.Reduced);
                }
                else if (facts.Taper == Variant.None || all || IsFact()) Training(phase);
            }
            foreach (var fixed_ in new[] { week.Lock?.Kind, StandingKind(week) }.OfType<WeekKind>().Where(kind => !moves.Exists(move => move.Phase == phase && (move.Kind == kind || Demands.IsByCalendar(move.Kind) && Demands.IsByCalendar(kind)))))
                Add(fixed_, VariantOf(fixed_, phase));

            void Add(WeekKind kind, Variant variant = Variant.None) => moves.Add(new(phase, kind, variant));
        }

        void Training(PhaseKind phase)
        {
            var week = facts.Week;
            var ceiling = Ceiling.Of(problem.Limits, facts, from, phase);
            // Into the season, and back in general preparation, by introductory weeks; elsewhere by re-entry weeks.
            var variant = ceiling?.Variant ?? Variant.None;
            if (from.Mode == Mode.Start && facts.IsPreparation) moves.Add(new(phase, WeekKind.Introductory, Variant.First));
            else if (ceiling is not null && (phase == PhaseKind.GeneralPreparation || from.Mode == Mode.Intro1 && facts.IsPreparation)) moves.Add(new(phase, WeekKind.Introductory, variant == Variant.Second ? Variant.Second : Variant.First));
            else if (ceiling is not null && from.Mode != Mode.Intro1) moves.Add(new(phase, WeekKind.ReEntry, variant));
            else if (ceiling is null && from.Mode == Mode.Intro1 && facts.IsPreparation) moves.Add(new(phase, WeekKind.Introductory, Variant.Second));
            moves.Add(new(phase, facts.IsCongested ? WeekKind.Congested : facts.IsOneMatchWeek ? WeekKind.Competition : WeekKind.Building));
            if (facts.IsCongested) return;
            if (phase is PhaseKind.GeneralPreparation or PhaseKind.SpecificPreparation) moves.Add(new(phase, WeekKind.Overload));
            moves.Add(new(phase, WeekKind.Unloading));
        }

        Variant VariantOf(WeekKind kind, PhaseKind phase) => kind switch
        {
            WeekKind.Introductory => from.Mode == Mode.Intro1 ? Variant.Second : Variant.First,
            WeekKind.ReEntry => Ceiling.Of(problem.Limits, facts, from, phase)?.Variant ?? Variant.WeekOff,
            WeekKind.Taper => facts.Taper == Variant.None ? Variant.Short : facts.Taper,
            _ => Variant.None,
        };

        // What stands may stay, if no condition speaks against it; whether anybody can train the calendar says.
        static WeekKind? StandingKind(PlannedWeek week) => week.IsBreak || week.IsReduced || week.Kept?.Kind is WeekKind.Break or WeekKind.Reduced ? null : week.Kept?.Kind;

        bool IsFact() => facts.Week.Index < problem.FirstOpen;
    }

    /// <summary>Whether a week sets the level; the others keep it, and so does a short first week, which is no measure for the next.</summary>
    public static bool SetsLevel(WeekFacts facts, Move move, Ceiling? ceiling) => facts.Week.Days == 7 && move.Kind switch
    {
        // In the competition lighter weeks are held against those with one match, like with like.
        WeekKind.Building => !facts.IsHold && !facts.IsCompetition,
        WeekKind.Competition => !facts.IsHold,
        WeekKind.Overload => true,
        // The first of two weeks back keeps the level that the second is held to.
        WeekKind.Introductory or WeekKind.ReEntry => ceiling is not { IsOfLevel: true, Variant: Variant.First },
        _ => false,
    };

    /// <summary>
    /// The level after a week. A reduced week that is the second one back from a long absence leaves the first one back as the week that
    /// the next is held to: what was reached before the absence is no longer.
    /// </summary>
    private static int LevelAfter(Limits limits, WeekFacts facts, Stand from, Move move, Ceiling? ceiling, int points)
    {
        if (SetsLevel(facts, move, ceiling)) return Stand.LevelOf(points);
        if (move.Kind != WeekKind.Reduced || ceiling is not { IsOfLevel: true, Variant: Variant.Second } || facts.Before is not { } first) return from.Level;
        return Math.Min(from.Level, Stand.LevelOf(new Ceiling(from.Reached * limits.ReturnShares.First / 100, limits.MatchMargins.Long, true, Variant.First).With(first.Week) / 10));
    }

    public static Stand After(Limits limits, WeekFacts facts, Stand from, Move move, Ceiling? ceiling, int points, int run)
    {
        var isTraining = move.Kind != WeekKind.Break;
        var isNew = facts.IsCycleStart || move.Phase != from.Phase;
        var weeksIn = facts.IsPreparation ? Math.Min(60, (isNew ? 0 : from.WeeksIn) + (isTraining ? 1 : 0)) : 0;
        var mode = move.Kind switch
        {
            WeekKind.Break or WeekKind.Reduced when from.Mode == Mode.Start => Mode.Start,
            WeekKind.Introductory => move.Variant == Variant.First ? Mode.Intro1 : Mode.Intro2,
            WeekKind.Overload => Mode.Overload,
            WeekKind.Unloading => Mode.Unloading,
            WeekKind.Taper => move.Variant is Variant.FullEarlier or Variant.BeforeMany ? Mode.TaperFirst : Mode.Taper,
            WeekKind.Break => Mode.Break,
            WeekKind.ReEntry => Mode.ReEntry,
            WeekKind.Transition => Mode.Transition,
            _ => Modes.Load(run),
        };
        return new(move.Phase, weeksIn, mode, LevelAfter(limits, facts, from, move, ceiling, points));
    }
}
