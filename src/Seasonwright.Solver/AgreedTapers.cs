using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>How the key matches of a plan that stands are tapered for, read off the kinds of its weeks: a repair keeps to it wherever a match is moved to.</summary>
public static class AgreedTapers
{
    /// <summary>A style for each key match that begins a cluster and whose week has a kind.</summary>
    public static ValueList<MatchTaper> Of(Season stands, int clusterDays)
    {
        List<MatchTaper> agreed = [];
        DateOnly? before = null;
        foreach (var match in stands.AllMatches.Where(match => match is { Importance: Importance.Key, Day: not null, IsOff: false }).OrderBy(match => match.Day))
        {
            var follows = before is { } last && match.Day!.Value.DayNumber - last.DayNumber <= clusterDays;
            before = match.Day;
            // The matches of a cluster share one taper, which belongs to the first.
            if (follows || stands.WeekOf(match.Day!.Value) is not { } week || stands.KindOf(week.Id) is null) continue;
            // A match early in its week is tapered for in the week before.
            var end = IsTaper(week.Number) ? week.Number : week.Number - 1;
            agreed.Add(new(match.Id, !IsTaper(end) ? TaperStyle.None : IsTaper(end - 1) ? TaperStyle.Full : TaperStyle.Short));
        }
        return agreed.ToValueList();

        bool IsTaper(int number) => number >= 1 && stands.KindOf(stands.Weeks[number - 1].Id) == WeekKind.Taper;
    }
}
