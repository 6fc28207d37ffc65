using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>
/// Runs of weeks painted over those that lie there. A run that stands as it is to be is left; one that lies mostly where one of its kind
/// lay, or goes on from it, keeps that one's id and with it the coach's name.
/// </summary>
internal static class Painting
{
    /// <param name="runs">What is to lie there, in order; weeks of no run are left alone.</param>
    /// <param name="laid">The runs of a season.</param>
    /// <param name="paint">The edit for a run and the standing one that it goes on as, if any.</param>
    public static IEnumerable<SeasonEdit> Of<TId, TKind>(Season season, IEnumerable<Run<TKind>> runs, Func<Season, IEnumerable<Laid<TId, TKind>>> laid, Func<Run<TKind>, Laid<TId, TKind>?, SeasonEdit> paint)
        where TId : struct
        where TKind : struct, Enum
    {
        var (now, kept) = (season, new HashSet<TId>());
        foreach (var run in runs)
        {
            var own = laid(now).Where(one => one.Kind.Equals(run.Kind) && (!kept.Contains(one.Id) || run.GoesOn(one.First, one.Last)) && run.MayBe(one.First, one.Last)).MaxBy(one => run.Shared(one.First, one.Last));
            if (own is not null) kept.Add(own.Id);
            // What of it lies beyond this run is painted by the next, or left alone.
            if (own is not null && run.Shared(own.First, own.Last) == run.Length) continue;
            var edit = paint(run, own);
            now = Decider.After(now, [edit]);
            yield return edit;
        }
    }

    /// <summary>What lies beside the end of a run.</summary>
    internal enum Edge
    {
        /// <summary>A week that may be painted, or the season's end.</summary>
        Free,

        /// <summary>A week that is left alone and belongs with the run.</summary>
        Same,

        /// <summary>A week that is left alone, of another run.</summary>
        Other,
    }

    /// <summary>A run of the season.</summary>
    internal sealed record Laid<TId, TKind>(TId Id, TKind Kind, string? Name, SeasonWeek First, SeasonWeek Last);

    /// <summary>A run to be painted. First and last week are inside.</summary>
    internal sealed record Run<TKind>(SeasonWeek First, SeasonWeek Last, TKind Kind, Edge Before, Edge After)
    {
        /// <summary>Whether this run may go on as a standing one: they share weeks, or it joins one that is left alone.</summary>
        public bool MayBe(SeasonWeek first, SeasonWeek last) =>
            (first.Number >= First.Number || Before != Edge.Free) && (Shared(first, last) > 0 || Before == Edge.Same && last.Number == First.Number - 1 || After == Edge.Same && first.Number == Last.Number + 1);

        /// <summary>Whether a standing run lies in the week before, which is left alone and belongs with this one.</summary>
        public bool GoesOn(SeasonWeek first, SeasonWeek last) => Before == Edge.Same && first.Number < First.Number && last.Number >= First.Number - 1;

        public int Length => Last.Number - First.Number + 1;

        public int Shared(SeasonWeek first, SeasonWeek last) => Math.Max(0, Math.Min(last.Number, Last.Number) - Math.Max(first.Number, First.Number) + 1);
    }
}
