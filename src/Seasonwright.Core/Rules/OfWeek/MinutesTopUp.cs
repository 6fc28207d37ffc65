using Seasonwright.Core.Seasons;

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

    /// <summary>An athlete who could train and played little.</summary>
    /// <param name="played">Minutes of the match.</param>
    /// <param name="hoursToSession">From the match to the first session that makes up for it; null for none.</param>
    /// <param name="share">The athlete's load of the week by the starters' median, 1 for the same.</param>
    public static Severity? Judge(int played, decimal? hoursToSession, decimal share, Figures figures) =>
        played < figures.Number(MinMinutes) && !(hoursToSession <= figures.Number(TopUpH)) && share < figures.Number(MinShare) ? Severity.Caution : null;
}
