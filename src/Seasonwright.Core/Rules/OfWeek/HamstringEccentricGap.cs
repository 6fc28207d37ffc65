using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Sessions with a tagged eccentric hamstring exercise.</summary>
internal static class HamstringEccentricGap
{
    public static readonly Figure TargetDays = Figure.Number("target_days", 10, FigureUnit.Days);
    public static readonly Figure LimitDays = Figure.Number("limit_days", 21, FigureUnit.Days);
    public static readonly Figure SetsMin = Figure.Number("sets_min", 1, FigureUnit.Count);

    public static Rule Rule { get; } = new("hamstring-eccentric-gap")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Strong,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.VanDyk2019, Sources.Ripley2021],
        Figures = [TargetDays, LimitDays, SetsMin],
        Rising = [[TargetDays, LimitDays]],
        Needs = Needs.Exercises,
        Looks = Looks,
    };

    /// <summary>
    /// Estimated from prevention work, where such exercises usually are; which they are waits for exercises. Where nobody says of any
    /// session that it is prevention, nobody says either that there is none.
    /// </summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var (target, limit, sets) = (figures.Number(TargetDays), figures.Number(LimitDays), figures.Number(SetsMin));
        return plan.Athletes.Looks(athlete => athlete.Sessions.Any(IsDose) ? DoseGap.All(plan, IsKnown, athlete.Sessions.Where(IsDose).Select(session => session.Day)).Select(Judge)
            : plan.Weeks.Where(IsKnown).Select(week => new TooLittle(Place.Of(week), "missing.prevention"))).Concat(plan.WithoutSessions);

        bool IsKnown(PlanWeek week) => week.HasOurs && week.IsTraining && (week.Phase is null || week.IsPreparation || week.IsCompetition);

        bool IsDose(Session session) => SessionContent.Gives(session, plan.Setup, QualityKind.Prevention) && !(SessionContent.Sets(session, plan.Setup, QualityKind.Prevention) < sets);

        Look Judge(DoseGap gap)
        {
            if (gap.Days <= target) return new Fine(gap.Place);
            var passed = gap.Days > limit ? LimitDays : TargetDays;
            return new Breach(gap.Place, "gap", passed == LimitDays ? Severity.Warning : Severity.Caution, gap.Days, passed == LimitDays ? limit : target)
            {
                Numbers = [gap.Days, passed == LimitDays ? limit : target],
                Figure = passed.Name,
                Beyond = gap.Days - target,
            };
        }
    }
}
