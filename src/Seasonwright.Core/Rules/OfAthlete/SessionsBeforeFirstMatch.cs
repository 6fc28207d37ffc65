using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Absence days; date of full-training release; number of full team sessions completed since; next match selection.</summary>
internal static class SessionsBeforeFirstMatch
{
    public static readonly Figure MinAbsenceDays = Figure.Number("min_absence_days", 8, FigureUnit.Days);
    public static readonly Figure MinSessions = Figure.Number("min_sessions", 6, FigureUnit.Count);
    public static readonly Figure MaxMinutes = Figure.Number("max_minutes", 45, FigureUnit.Minutes);

    public static Rule Rule { get; } = new("sessions-before-first-match")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Bengtsson2020, Sources.ReturnComment],
        Figures = [MinAbsenceDays, MinSessions, MaxMinutes],
        Needs = Needs.Availability | Needs.Reports,
    };

    /// <param name="daysAway">Before the return to full training.</param>
    /// <param name="fullSessions">With the team since then, before the match.</param>
    public static Severity? Judge(int daysAway, int fullSessions, Figures figures) =>
        daysAway >= figures.Number(MinAbsenceDays) && fullSessions < figures.Number(MinSessions) ? Severity.Warning : null;
}
