using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Match clock; planned non-match load; session intents.</summary>
internal static class HeavyWeekInCongestion
{
    public static readonly Figure CongestedGapH = Figure.Number("congested_gap_h", 96, FigureUnit.Hours);
    public static readonly Figure MaxShare = Figure.Number("max_share", 0.6m, FigureUnit.Share);
    public static readonly Figure MaxSetsLower = Figure.Number("max_sets_lower", 6, FigureUnit.Count);

    public static Rule Rule { get; } = new("heavy-week-in-congestion")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Julian2021, Sources.Howle2020, Sources.Bengtsson2018],
        Figures = [CongestedGapH, MaxShare, MaxSetsLower],
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var close = MatchGap.All(plan).Where(gap => gap.Hours < figures.Number(CongestedGapH)).Select(gap => gap.Second.Day!.Value).ToHashSet();
        foreach (var week in plan.Weeks.Where(week => week.Matches.Length > 1 && week.Matches.Any(match => close.Contains(match.Day!.Value))))
        {
            var place = Place.Of(week);
            var usual = plan.Weeks.Take(week.Number - 1).LastOrDefault(other => other.Matches.Length == 1 && other.IsNormal && other.Training > 0);
            if (week.Kind is WeekKind.Building or WeekKind.Overload)
            {
                yield return new Breach(place, "kind", Severity.Warning, 1, 0) { Numbers = [week.Matches.Length], Remedy = [new SetWeekKind(week.Id, week.Id, WeekKind.Congested), .. Lighter(week, usual, figures)] };
                continue;
            }
            if (week.Training is not { } training || usual is null)
            {
                yield return new TooLittle(place, week.Training is null ? "missing.load" : "missing.before");
                continue;
            }
            var share = (training / usual.Training!.Value).AsShown();
            if (share <= figures.Number(MaxShare)) yield return new Fine(place);
            else
            {
                yield return new Breach(place, "heavy", Severity.Warning, share, figures.Number(MaxShare))
                {
                    Numbers = [share.AsPercent(), usual.Number, figures.Number(MaxShare).AsPercent(), week.Matches.Length],
                    Figure = MaxShare.Name,
                    Remedy = [.. Lighter(week, usual, figures)],
                };
            }
        }
    }

    private static IEnumerable<SeasonEdit> Lighter(PlanWeek week, PlanWeek? usual, Figures figures)
    {
        if (usual?.Training is not { } training || week.Training is not { } planned || planned <= figures.Number(MaxShare) * training) yield break;
        yield return new SetWeekLoad(week.Id, week.Id, new Load((int)(week.Load.Match.Au + figures.Number(MaxShare) * training)));
    }
}
