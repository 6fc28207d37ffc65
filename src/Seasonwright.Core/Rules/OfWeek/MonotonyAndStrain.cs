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
        Needs = Needs.Sessions,
    };

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
        var spread = figures.Text(Sd) == Sd.Default ? Spread.Sample : Spread.Population;
        if (Monotony.Of(known, spread) is not { } monotony || monotony > (double)figures.Number(WarningM)) return new(Severity.Warning);
        var own = before.TakeLast((int)figures.Number(BaselineWeeks)).ToList();
        var isStrained = own.Count == figures.Number(BaselineWeeks)
            && known.Sum() * monotony > (double)figures.Number(StrainFactor) * own.Average(week => week.Strain)
            && known.Sum() > Median([.. own.Select(week => week.Load).Order()]);
        return new(monotony > (double)figures.Number(CautionM) || isStrained ? Severity.Caution : null);
    }

    private static double Median(IReadOnlyList<double> ordered) => (ordered[(ordered.Count - 1) / 2] + ordered[ordered.Count / 2]) / 2;
}
