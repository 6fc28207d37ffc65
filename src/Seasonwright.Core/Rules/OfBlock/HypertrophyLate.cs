using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfBlock;

/// <summary>Blocks with hypertrophy: develop; competition phase; decisive match dates.</summary>
internal static class HypertrophyLate
{
    public static readonly Figure MinGapDays = Figure.Number("min_gap_days", 21, FigureUnit.Days);

    public static Rule Rule { get; } = new("hypertrophy-late")
    {
        Scope = RuleScope.Block,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Hartmann2015, Sources.Spiering2021],
        Figures = [MinGapDays],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures) => plan.HasEmphasis ? Judge(plan, figures) : plan.WithoutEmphasis;

    private static IEnumerable<Look> Judge(Plan plan, Figures figures)
    {
        foreach (var run in plan.Runs(week => week.Exposures(QualityKind.Hypertrophy) >= (int)Emphasis.Develop))
        {
            foreach (var week in run.Where(week => week.IsCompetition))
                yield return new Breach(Place.Of(week), "competition", Severity.Caution, week.Exposures(QualityKind.Hypertrophy), (int)Emphasis.Maintain)
                {
                    Remedy = [.. plan.Ease([week], QualityKind.Hypertrophy, Emphasis.Maintain)],
                };
            if (run[^1].IsCompetition || plan.Official.FirstOrDefault(match => match.Importance == Importance.Key && match.Day > run[^1].Days.Last) is not { } key) continue;
            var days = key.Day!.Value.DayNumber - run[^1].Days.Last.DayNumber;
            var place = Place.Of(run[0], run[^1]);
            if (days >= figures.Number(MinGapDays)) yield return new Fine(place);
            else
            {
                yield return new Breach(place, "close", Severity.Caution, days, figures.Number(MinGapDays))
                {
                    Numbers = [days, key.Day, figures.Number(MinGapDays)],
                    Figure = MinGapDays.Name,
                    Remedy = [.. plan.Ease(run.Where(week => key.Day.Value.DayNumber - week.Days.Last.DayNumber < figures.Number(MinGapDays)), QualityKind.Hypertrophy, Emphasis.Maintain)],
                };
            }
        }
    }
}
