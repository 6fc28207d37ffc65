namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Match minutes per athlete; weekly load per athlete v median of starters; sessions in the 48 h after the match.</summary>
internal static class MinutesTopUp
{
    public static readonly Figure MinMinutes = Figure.Number("min_minutes", 60, FigureUnit.Minutes);
    public static readonly Figure TopUpH = Figure.Number("top_up_h", 48, FigureUnit.Hours);
    public static readonly Figure MinShare = Figure.Number("min_share", 0.8m, FigureUnit.Share);

    public static Rule Rule { get; } = new("minutes-top-up")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Starters2024],
        Figures = [MinMinutes, TopUpH, MinShare],
        Needs = Needs.Reports | Needs.Sessions,
    };
}
