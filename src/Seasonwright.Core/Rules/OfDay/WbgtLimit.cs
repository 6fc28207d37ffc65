using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Forecast or measured WBGT at session start; athlete acclimatised (>= 14 days in these conditions) yes/no; session intensity.</summary>
internal static class WbgtLimit
{
    public static readonly Figure WarmFrom = Figure.Number("warm_from", 24, FigureUnit.Celsius);
    public static readonly Figure B1 = Figure.Number("b1", 27.9m, FigureUnit.Celsius);
    public static readonly Figure B2 = Figure.Number("b2", 30.1m, FigureUnit.Celsius);
    public static readonly Figure B3 = Figure.Number("b3", 32.2m, FigureUnit.Celsius);
    public static readonly Figure RecheckMin = Figure.Number("recheck_min", 60, FigureUnit.Minutes);
    public static readonly Figure RegionalShiftC = Figure.Number("regional_shift_c", 0, FigureUnit.Celsius, least: -20);

    public static Rule Rule { get; } = new("wbgt-limit")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Stop,
        Evidence = Evidence.Strong,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Acsm2007],
        Figures = [WarmFrom, B1, B2, B3, RecheckMin, RegionalShiftC],
        Needs = Needs.Weather | Needs.Sessions,
        Releasers = [StaffRole.Doctor, StaffRole.Physiotherapist],
    };

    /// <param name="celsius">Wet bulb globe temperature at the start: air temperature is not it.</param>
    /// <param name="isAcclimatised">14 days and more in such conditions; a mixed group is judged as one that is not.</param>
    public static Severity? Judge(decimal celsius, bool isAcclimatised, Figures figures)
    {
        // Moving the bands up is moving the measure down.
        var heat = celsius - figures.Number(RegionalShiftC);
        var (warm, hot, hottest) = (figures.Number(B1), figures.Number(B2), figures.Number(B3));
        return isAcclimatised
            ? heat > hottest ? Severity.Stop : heat >= hot ? Severity.Warning : heat >= warm ? Severity.Caution : null
            : heat >= hot ? Severity.Stop : heat >= warm ? Severity.Warning : heat >= figures.Number(WarmFrom) ? Severity.Caution : null;
    }
}
