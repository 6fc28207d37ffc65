using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Seven daily loads (rest days as 0) per athlete; own previous 6 weeks.</summary>
internal static class MonotonyAndStrain
{
    public static readonly Figure Sd = Figure.Choice("sd", "sample", "population");
    public static readonly Figure CautionM = Figure.Number("caution_m", 1.5m, FigureUnit.Count);
    public static readonly Figure WarningM = Figure.Number("warning_m", 2, FigureUnit.Count);
    public static readonly Figure StrainFactor = Figure.Number("strain_factor", 1.5m, FigureUnit.Count);
    public static readonly Figure MinDaysLogged = Figure.Number("min_days_logged", 5, FigureUnit.Count);
    public static readonly Figure BaselineWeeks = Figure.Number("baseline_weeks", 6, FigureUnit.Weeks);

    public static Rule Rule { get; } = new("monotony-and-strain")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Contested,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Foster1998],
        Figures = [Sd, CautionM, WarningM, StrainFactor, MinDaysLogged, BaselineWeeks, Figure.HighestSeverity],
        Rising = [[CautionM, WarningM]],
        Looks = Looks,
    };

    /// <summary>Days all alike stand for this much.</summary>
    private const decimal AllAlike = 99;

    private static IEnumerable<Look> Looks(Plan plan, Figures figures) => plan.Athletes.Looks(athlete => Looks(plan, athlete, figures));

    private static IEnumerable<Look> Looks(Plan plan, AthleteDays athlete, Figures figures)
    {
        var (baseline, spread) = ((int)figures.Number(BaselineWeeks), SpreadOf(figures));
        List<(double Load, double Strain)?> own = [];
        foreach (var week in plan.Weeks)
        {
            if (!week.IsLaidOut)
            {
                own.Add(null);
                if (week.HasOurs || week.HasPractices || week.IsTraining) yield return new TooLittle(Place.Of(week), week.HasOurs ? "missing.practices" : "missing.sessions");
                continue;
            }
            double[] days = [.. week.Days.Days().Select(day => (double)(athlete.LoadOn(day) + week.MatchAuOn(day, plan.Setup)))];
            var before = own.TakeLast(baseline).ToList();
            var strain = Monotony.Strain(days, spread);
            own.Add(strain is { } known ? (days.Sum(), known) : null);
            yield return Judge([.. days.Select(day => (double?)day)], before.Contains(null) ? [] : [.. before.OfType<(double, double)>()], figures) switch
            {
                { IsTooLittle: true } => new TooLittle(Place.Of(week), "missing.days"),
                { Severity: { } severity } => Told(week, severity, Monotony.Of(days, spread), before.Count == 0 || before.Contains(null) ? null : before.Average(other => other!.Value.Strain), days.Sum(), figures),
                _ => new Fine(Place.Of(week)),
            };
        }
    }

    private static Breach Told(PlanWeek week, Severity severity, double? monotony, double? mean, double load, Figures figures)
    {
        var shown = Shown(monotony);
        if (shown > Math.Min(figures.Number(CautionM), figures.Number(WarningM)))
        {
            var limit = shown > figures.Number(WarningM) ? WarningM : CautionM;
            return new Breach(Place.Of(week), monotony is null ? "same" : "alike", severity, shown, figures.Number(limit))
            {
                Numbers = [shown, figures.Number(limit)],
                Figure = limit.Name,
                Beyond = shown - Math.Min(figures.Number(CautionM), figures.Number(WarningM)),
            };
        }
        var times = ((decimal)(load * monotony!.Value / mean!.Value)).AsShown();
        return new Breach(Place.Of(week), "strain", severity, times, figures.Number(StrainFactor)) { Numbers = [times, figures.Number(StrainFactor), figures.Number(BaselineWeeks)], Figure = StrainFactor.Name };
    }

    private static decimal Shown(double? monotony) => monotony < (double)AllAlike ? ((decimal)monotony.Value).AsShown() : AllAlike;

    private static Spread SpreadOf(Figures figures) => figures.Text(Sd) == Sd.Default ? Spread.Sample : Spread.Population;

    /// <summary>
    /// A week of one athlete. Days without training are 0, days that nobody reported null: they are left out, never taken as 0.
    /// Days all alike have no monotony and count as above every limit.
    /// </summary>
    /// <param name="days">AU a day.</param>
    /// <param name="before">Load and strain in AU of the athlete's own weeks before, latest last; with fewer than the baseline has, strain is not judged.</param>
    public static Verdict Judge(IReadOnlyList<double?> days, IReadOnlyList<(double Load, double Strain)> before, Figures figures)
    {
        double[] known = [.. days.OfType<double>()];
        if (known.Length < figures.Number(MinDaysLogged)) return Verdict.TooLittle;
        if (known.Sum() <= 0) return new(null);
        if (Monotony.Of(known, SpreadOf(figures)) is not { } monotony || Shown(monotony) > figures.Number(WarningM)) return new(Severity.Warning);
        var own = before.TakeLast((int)figures.Number(BaselineWeeks)).ToList();
        var isStrained = own.Count > 0 && own.Count == figures.Number(BaselineWeeks)
            && known.Sum() * monotony > (double)figures.Number(StrainFactor) * own.Average(week => week.Strain)
            && known.Sum() > Median([.. own.Select(week => week.Load).Order()]);
        return new(Shown(monotony) > figures.Number(CautionM) || isStrained ? Severity.Caution : null);
    }

    private static double Median(IReadOnlyList<double> ordered) => (ordered[(ordered.Count - 1) / 2] + ordered[ordered.Count / 2]) / 2;
}
