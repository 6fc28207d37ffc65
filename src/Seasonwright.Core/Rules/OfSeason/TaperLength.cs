using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Decisive matches; daily planned load; taper blocks.</summary>
internal static class TaperLength
{
    public static readonly Figure MinDays = Figure.Number("min_days", 4, FigureUnit.Days);
    public static readonly Figure BestMin = Figure.Number("best_min", 8, FigureUnit.Days);
    public static readonly Figure BestMax = Figure.Number("best_max", 14, FigureUnit.Days);
    public static readonly Figure MaxDays = Figure.Number("max_days", 21, FigureUnit.Days);
    public static readonly Figure ShortMax = Figure.Number("short_max", 7, FigureUnit.Days);
    public static readonly Figure TaperStyle = Figure.Choice("taper_style", "by_length", "short", "full");
    public static readonly Figure DetectShare = Figure.Number("detect_share", 0.85m, FigureUnit.Share);
    public static readonly Figure ReferenceWeeks = Figure.Number("reference_weeks", 2, FigureUnit.Weeks);

    public static Rule Rule { get; } = new("taper-length")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Warning,
        Evidence = Evidence.Strong,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Bosquet2007, Sources.Wang2023, Sources.Mujika2003, Sources.Vachon2021],
        Figures = [MinDays, BestMin, BestMax, MaxDays, ShortMax, TaperStyle, DetectShare, ReferenceWeeks],
        Rising = [[MinDays, BestMin, BestMax, MaxDays]],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var match in plan.TaperedFor)
        {
            var week = plan.WeekOf(match.Day!.Value)!;
            var place = new Place($"match/{match.Id}", week.Number, week.Number);
            if (plan.Weeks.Take(week.Number).TakeLast(3).All(other => other.Total is null && other.Kind is null))
            {
                yield return new TooLittle(place, "missing.load");
                continue;
            }
            var taper = Taper.Before(plan, match, figures.Number(DetectShare), (int)figures.Number(ReferenceWeeks));
            yield return Judge(plan, match, taper, taper.Weeks.Count > 0 ? place with { First = taper.Weeks[0].Number } : place, figures);
        }
    }

    private static Look Judge(Plan plan, Match match, Taper taper, Place place, Figures figures)
    {
        var (days, style) = (taper.Days, figures.Text(TaperStyle));
        var isFull = style == "full" || style == TaperStyle.Default && days > figures.Number(ShortMax);
        Breach Broken(string code, Severity severity, Figure limit) => new(place, code, severity, days, figures.Number(limit))
        {
            Numbers = [match.Day, days, figures.Number(limit), figures.Number(BestMin), figures.Number(BestMax)],
            Figure = limit.Name,
        };
        if (days < figures.Number(MinDays)) return Broken("missing", Severity.Caution, MinDays) with { Remedy = Tapered(plan, match, figures) };
        if (!isFull && days > figures.Number(ShortMax)) return Broken("long-short", Severity.Warning, ShortMax);
        if (isFull && days < figures.Number(BestMin)) return Broken("short", Severity.Caution, BestMin);
        if (isFull && days > figures.Number(MaxDays)) return Broken("long", Severity.Warning, MaxDays);
        return new Fine(place);
    }

    /// <summary>The short version: the week that holds most of the days before the match, at the middle of a short taper's size.</summary>
    private static ValueList<SeasonEdit> Tapered(Plan plan, Match match, Figures figures)
    {
        var week = Taper.WeekFor(plan, match);
        if (week is null || !week.IsTraining) return [];
        var volume = new Figures(TaperVolume.Rule.Id, plan.Setup);
        var keep = 1 - (volume.Number(TaperVolume.ShortMinDrop) + volume.Number(TaperVolume.ShortMaxDrop)) / 2;
        var before = plan.NormalBefore(week, (int)figures.Number(ReferenceWeeks)).Select(other => other.Training!.Value).ToList();
        return before.Count == 0
            ? [new SetWeekKind(week.Id, week.Id, WeekKind.Taper)]
            : [new SetWeekKind(week.Id, week.Id, WeekKind.Taper), new SetWeekLoad(week.Id, week.Id, Plan.LoadOf(week.Load.Match.Au + keep * before.Average()))];
    }
}
