using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Weekly planned loads; week kinds.</summary>
internal static class BuildingRunTooLong
{
    /// <summary>At this share of the last three weeks a week unloads whatever it is called. From the rulebook's table of terms; common practice, no source.</summary>
    private const decimal LighterShare = 0.80m;

    public static readonly Figure MaxBuildingWeeks = Figure.Number("max_building_weeks", 3, FigureUnit.Weeks);
    public static readonly Figure HardMaxBuildingWeeks = Figure.Number("hard_max_building_weeks", 6, FigureUnit.Weeks);
    public static readonly Figure NoviceMaxBuildingWeeks = Figure.Number("novice_max_building_weeks", 5, FigureUnit.Weeks);
    public static readonly Figure InSeasonMaxWeeks = Figure.Number("in_season_max_weeks", 8, FigureUnit.Weeks);

    public static Rule Rule { get; } = new("building-run-too-long")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Rogerson2024, Sources.Bell2023],
        Figures = [MaxBuildingWeeks, HardMaxBuildingWeeks, NoviceMaxBuildingWeeks, InSeasonMaxWeeks],
        Rising = [[MaxBuildingWeeks, HardMaxBuildingWeeks]],
        Needs = Needs.Squad,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        List<PlanWeek> run = [];
        foreach (var week in plan.Weeks.Append(null))
        {
            if (week is not null && week.IsTraining && week.IsHold) continue;
            // From preparation into the competition the count begins anew: the limits differ.
            if (week is not null && IsBuilding(plan, week) && (run.Count == 0 || run[0].IsCompetition == week.IsCompetition)) run.Add(week);
            else
            {
                if (run.Count > 0) yield return Judge(run, figures);
                run = week is not null && IsBuilding(plan, week) ? [week] : [];
            }
        }
    }

    /// <summary>How many building weeks in a row end with this one; 0 where it is none.</summary>
    public static int CountTo(Plan plan, PlanWeek week) => IsBuilding(plan, week) && !week.IsHold
        ? plan.Weeks.Take(week.Number).Reverse().TakeWhile(other => other.IsTraining && (other.IsHold || IsBuilding(plan, other))).Count(other => !other.IsHold)
        : 0;

    private static Look Judge(List<PlanWeek> run, Figures figures)
    {
        var place = Place.Of(run[0], run[^1]);
        var (limit, severity) = (run[0].IsCompetition, run.Count) switch
        {
            (true, var count) when count > figures.Number(InSeasonMaxWeeks) => (InSeasonMaxWeeks, Severity.Caution),
            (false, var count) when count > figures.Number(HardMaxBuildingWeeks) => (HardMaxBuildingWeeks, Severity.Warning),
            (false, var count) when count > figures.Number(MaxBuildingWeeks) => (MaxBuildingWeeks, Severity.Caution),
            _ => (null, default(Severity)),
        };
        if (limit is null) return new Fine(place);
        // A team may have the usual number above the hard one: the smaller of both counts.
        var usual = run[0].IsCompetition ? figures.Number(InSeasonMaxWeeks) : Math.Min(figures.Number(MaxBuildingWeeks), figures.Number(HardMaxBuildingWeeks));
        // The week after as many as are usual, where it may still be made easier.
        var easier = run[(int)usual];
        return new Breach(place, run[0].IsCompetition ? "season" : "preparation", severity, run.Count, figures.Number(limit))
        {
            Numbers = [run.Count, usual],
            Figure = limit.Name,
            Beyond = run.Count - usual,
            Remedy = [new SetWeekKind(easier.Id, easier.Id, WeekKind.Unloading), .. Unloaded(run, easier)],
        };
    }

    /// <summary>Its training cut to the middle of the usual size, from the weeks before it.</summary>
    private static IEnumerable<SeasonEdit> Unloaded(List<PlanWeek> run, PlanWeek easier)
    {
        if (easier.Total is null || run.TakeWhile(week => week != easier).TakeLast(3).Select(week => week.Training).OfType<decimal>().ToList() is not { Count: > 0 } before) yield break;
        var keep = easier.IsCompetition ? 0.78m : 0.60m;
        yield return new SetWeekLoad(easier.Id, easier.Id, Plan.LoadOf(easier.Load.Match.Au + keep * before.Average()));
    }

    /// <summary>A training week that is neither named easier nor so much lighter than the weeks before that it is.</summary>
    private static bool IsBuilding(Plan plan, PlanWeek week)
    {
        if (!week.IsTraining || week.IsEasy || week.Kind is null && week.Total is null) return false;
        var before = plan.Weeks.Take(week.Number - 1).Where(other => other.IsTraining && !other.IsEasy).Select(other => other.Total).OfType<decimal>().TakeLast(3).ToList();
        return week.Total is not { } total || before.Count == 0 || total > LighterShare * before.Average();
    }
}
