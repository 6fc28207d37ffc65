using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

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
            var share = usual?.Training is { } normal && week.Training is { } planned ? (planned / normal).AsShown() : (decimal?)null;
            if (!(share > figures.Number(MaxShare)) && Developing(plan, week, figures) is { Count: > 0 } sessions)
            {
                yield return new Breach(place, "content", Severity.Warning, sessions.Count, 0) { Numbers = [week.Matches.Length, new NamedSession(sessions[0]), figures.Number(MaxSetsLower)], Remedy = [.. sessions.SelectMany(session => BetterSession.Small(session))] };
                continue;
            }
            if (share is null)
            {
                yield return new TooLittle(place, week.Training is null ? "missing.load" : "missing.before");
                continue;
            }
            if (share <= figures.Number(MaxShare)) yield return new Fine(place);
            else
            {
                yield return new Breach(place, "heavy", Severity.Warning, share.Value, figures.Number(MaxShare))
                {
                    Numbers = [share.Value.AsPercent(), usual!.Number, figures.Number(MaxShare).AsPercent(), week.Matches.Length],
                    Figure = MaxShare.Name,
                    Remedy = [.. Lighter(week, usual, figures)],
                };
            }
        }
    }

    /// <summary>Sessions that build muscle, or give the legs more heavy sets than upkeep wants.</summary>
    private static List<Session> Developing(Plan plan, PlanWeek week, Figures figures) =>
        [.. plan.Season.SessionsIn(week.Week).Where(session => SessionContent.IsHypertrophy(session, plan.Setup)
            || SessionUse.IsHeavy(session, plan.Setup) && SessionContent.Sets(session, plan.Setup, QualityKind.MaximumStrength) > figures.Number(MaxSetsLower))];

    private static IEnumerable<SeasonEdit> Lighter(PlanWeek week, PlanWeek? usual, Figures figures)
    {
        if (usual?.Training is not { } training || week.Training is not { } planned || planned <= figures.Number(MaxShare) * training) yield break;
        yield return new SetWeekLoad(week.Id, week.Id, new Load((int)(week.Load.Match.Au + figures.Number(MaxShare) * training)));
    }
}
