using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>End of one match to start of the next, per team and per athlete.</summary>
internal static class MatchGapShort
{
    public static readonly Figure HardH = Figure.Number("hard_h", 72, FigureUnit.Hours);
    public static readonly Figure CongestedH = Figure.Number("congested_h", 96, FigureUnit.Hours);
    public static readonly Figure Preset = Figure.Choice("preset", "off", "stop_72");

    public static Rule Rule { get; } = new("match-gap-short")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Stop,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Fifa2025, Sources.Julian2021, Sources.Silva2018, Sources.Silva2018Conclusion, Sources.Bengtsson2018],
        Figures = [HardH, CongestedH, Preset, Figure.PresetDate],
        Rising = [[HardH, CongestedH]],
        Needs = Needs.Reports,
        Releasers = [StaffRole.Doctor, StaffRole.Management],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var gap in MatchGap.All(plan))
        {
            if (plan.WeekOf(gap.Second.Day!.Value) is not { } week) continue;
            var isHard = gap.Hours < figures.Number(HardH);
            if (!isHard && gap.Hours >= figures.Number(CongestedH)) yield return new Fine(Place.Of(week));
            else
            {
                var limit = isHard ? HardH : CongestedH;
                yield return new Breach(Place.Of(week), gap.IsEstimated ? "estimated" : "short", SeverityOf(isHard, gap.Second.Day!.Value, figures), gap.Hours, figures.Number(limit))
                {
                    Numbers = [gap.Hours, gap.First.Day, gap.Second.Day, figures.Number(limit)],
                    Figure = limit.Name,
                    Beyond = Math.Max(figures.Number(CongestedH), figures.Number(HardH)) - gap.Hours,
                    IsForced = true,
                };
            }
        }
    }

    private static Severity SeverityOf(bool isHard, DateOnly day, Figures figures) =>
        !isHard ? Severity.Caution : figures.Preset(Preset, day) is null ? Severity.Warning : Severity.Stop;
}
