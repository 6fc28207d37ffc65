using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>A plan as edits of the season: run by run, and only where the season stands otherwise. Locked and past weeks are left alone, but for a past one that was lost.</summary>
internal static class ProposedEdits
{
    /// <summary>What is tested, until the coach says otherwise. Common practice, no source.</summary>
    private const string Battery = "Strength, jumps, sprint";

    public static ValueList<SeasonEdit> Of(Season season, Setup setup, Problem problem, Structure structure, LoadPlan loads, EmphasisPlan emphasis, Func<int, bool> takes, Func<string, string, string> id)
    {
        List<SeasonEdit> edits = [];
        // A plan proposed before may have made things of the same name.
        HashSet<string> known = new(season.Phases.Select(run => run.Id.Text).Concat(season.Blocks.Select(run => run.Id.Text)).Concat(season.AllTestDays.Select(test => test.Id.Text)), StringComparer.Ordinal);
        bool IsOpen(int week) => takes(week) && week >= problem.FirstOpen && !problem.Weeks[week].IsSettled && !season.IsLocked(problem.Weeks[week].Id);
        // What was lost of a week that has begun is no plan any more: that is entered, in weeks that are not locked.
        bool IsTold(int week) => IsOpen(week) || takes(week) && problem.Weeks[week].WasLost && !season.IsLocked(problem.Weeks[week].Id);
        var (weeks, all) = (structure.Weeks, Enumerable.Range(0, problem.Weeks.Count).ToList());
        IEnumerable<(SeasonWeek First, SeasonWeek Last, int At)> Runs<T>(Func<int, T> what) => Open(season, all, IsOpen, what);
        IEnumerable<(SeasonWeek First, SeasonWeek Last, int At)> Told<T>(Func<int, T> what) => Open(season, all, IsTold, what);

        edits.AddRange(Painting.Of(season, Painted(week => weeks[week].Phase, at => weeks[at].Phase),
            now => now.Phases.Select(run => new Painting.Laid<PhaseId, PhaseKind>(run.Id, run.Phase.Kind, run.Phase.Name, run.First, run.Last)),
            (run, own) => new PaintPhase(run.First.Id, run.Last.Id, own?.Id ?? new(New("phase", run.First.Id.Text)), run.Kind, new(New("phase-rest", run.First.Id.Text)), own?.Name)));
        edits.AddRange(Painting.Of(season, Painted(week => weeks[week].Kind == WeekKind.Break ? -1 : weeks[week].Block, at => KindOf(weeks.Where(week => week.Block == weeks[at].Block).ToList())).Where(run => weeks[run.First.Number - 1].Kind != WeekKind.Break),
            now => now.Blocks.Select(run => new Painting.Laid<BlockId, BlockKind>(run.Id, run.Block.Kind, run.Block.Name, run.First, run.Last)),
            (run, own) => new PaintBlock(run.First.Id, run.Last.Id, own?.Id ?? new(New("block", run.First.Id.Text)), run.Kind, new(New("block-rest", run.First.Id.Text)), own?.Name)));
        foreach (var (first, last, at) in Told(week => weeks[week].Kind))
            if (Between(season, first, last).Any(week => season.KindOf(week.Id) != weeks[at].Kind)) edits.Add(new SetWeekKind(first.Id, last.Id, weeks[at].Kind));
        // Nothing is moved by less than a point.
        foreach (var (first, last, at) in Told(week => season.TargetOf(season.Weeks[week].Id) is { } load && problem.Points.Of(load) == loads.Points[week] ? -1 : loads.Points[week]))
            if (season.TargetOf(first.Id) is not { } load || problem.Points.Of(load) != loads.Points[at]) edits.Add(new SetWeekLoad(first.Id, last.Id, problem.Points.ToLoad(loads.Points[at])));
        foreach (var quality in Planned(setup))
            foreach (var (first, last, at) in Told(week => LevelOf(quality, week)))
                if (Between(season, first, last).Any(week => season.EmphasisOf(week.Id, quality.Id) != LevelOf(quality, at))) edits.Add(new SetEmphasis(first.Id, last.Id, quality.Id, LevelOf(quality, at)));
        foreach (var day in emphasis.Tests.Where(day => problem.Weeks.Any(week => IsOpen(week.Index) && week.Holds(day)))) edits.Add(new SetTestDay(new TestDay(new(New("test", day.ToString("O", System.Globalization.CultureInfo.InvariantCulture))), day, Battery)));
        // A test day that gives way is no part of its week's plan: it goes with either week.
        foreach (var (moved, from, to) in emphasis.Moved)
            if (to is { } day && season.AllTestDays.FirstOrDefault(test => test.Id == moved) is { } test && (Takes(from) || Takes(day))) edits.Add(new SetTestDay(test with { Day = day }));
        return edits.ToValueList();

        bool Takes(DateOnly day) => season.WeekOf(day) is { } week && takes(week.Number - 1);

        string New(string kind, string key)
        {
            var made = id(kind, key);
            for (var again = 2; !known.Add(made); again++) made = id(kind, $"{key} {again}");
            return made;
        }

        IEnumerable<Painting.Run<TKind>> Painted<T, TKind>(Func<int, T> what, Func<int, TKind> kind) => Runs(what).Select(run => new Painting.Run<TKind>(run.First, run.Last, kind(run.At), Beside(what, run.At, run.At - 1), Beside(what, run.Last.Number - 1, run.Last.Number)));

        Painting.Edge Beside<T>(Func<int, T> what, int week, int next) => next < 0 || next >= weeks.Count || IsOpen(next) ? Painting.Edge.Free : EqualityComparer<T>.Default.Equals(what(week), what(next)) ? Painting.Edge.Same : Painting.Edge.Other;

        // Prevention has its place in every training week.
        Emphasis LevelOf(Quality quality, int week) => quality.Kind != QualityKind.Prevention ? (Emphasis)emphasis.Levels[week][(int)quality.Kind]
            : problem.Stays(weeks[week]) ? season.EmphasisOf(season.Weeks[week].Id, quality.Id)
            : weeks[week].Kind is WeekKind.Break or WeekKind.Transition || problem.Weeks[week].IsLost ? Emphasis.None : Emphasis.Maintain;
    }

    /// <summary>What an edit of a proposal is about.</summary>
    public static ProposedTrack TrackOf(SeasonEdit edit) => edit switch
    {
        PaintPhase => ProposedTrack.Phases,
        PaintBlock => ProposedTrack.Blocks,
        SetWeekKind => ProposedTrack.Kinds,
        SetWeekLoad => ProposedTrack.Loads,
        SetEmphasis => ProposedTrack.Emphasis,
        SetTestDay => ProposedTrack.Tests,
        _ => throw new ArgumentException($"No proposal holds a {edit.GetType().Name}.", nameof(edit)),
    };

    /// <summary>One quality of each kind, the first in the team's order; the coach's own are not touched.</summary>
    private static IEnumerable<Quality> Planned(Setup setup) => setup.Qualities.Where(quality => quality.Kind != QualityKind.Other).GroupBy(quality => quality.Kind).Select(ofKind => ofKind.First());

    /// <summary>Runs of open weeks side by side for which something is the same.</summary>
    private static IEnumerable<(SeasonWeek First, SeasonWeek Last, int At)> Open<T>(Season season, List<int> weeks, Func<int, bool> isOpen, Func<int, T> what)
    {
        var first = 0;
        while (first < weeks.Count)
        {
            var last = first;
            while (last + 1 < weeks.Count && isOpen(last + 1) == isOpen(first) && EqualityComparer<T>.Default.Equals(what(last + 1), what(first))) last++;
            if (isOpen(first)) yield return (season.Weeks[first], season.Weeks[last], first);
            first = last + 1;
        }
    }

    private static IEnumerable<SeasonWeek> Between(Season season, SeasonWeek first, SeasonWeek last) => season.Weeks.Skip(first.Number - 1).Take(last.Number - first.Number + 1);

    private static BlockKind KindOf(List<StructureWeek> block) => block[0] switch
    {
        { Phase: PhaseKind.Transition } => BlockKind.Transition,
        { Kind: WeekKind.ReEntry } when block.TrueForAll(week => week.Kind is WeekKind.ReEntry or WeekKind.Break) => BlockKind.ReEntry,
        { Kind: WeekKind.Introductory } when block.TrueForAll(week => week.Kind == WeekKind.Introductory) => BlockKind.Introductory,
        { Phase: PhaseKind.GeneralPreparation } => BlockKind.Base,
        { Phase: PhaseKind.SpecificPreparation or PhaseKind.PreCompetition } => BlockKind.Build,
        { Phase: PhaseKind.Peak } => BlockKind.Peak,
        _ => BlockKind.Competition,
    };
}
