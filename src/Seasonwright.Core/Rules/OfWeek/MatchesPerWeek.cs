using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Match dates per team and per athlete (minutes >= 45), rolling 7 days.</summary>
internal static class MatchesPerWeek
{
    public static readonly Figure Target = Figure.Number("target", 1, FigureUnit.Count);
    public static readonly Figure Limit = Figure.Number("limit", 2, FigureUnit.Count);
    public static readonly Figure TournamentLimit = Figure.Number("tournament_limit", 3, FigureUnit.Count);
    public static readonly Figure AthleteMinMinutes = Figure.Number("athlete_min_minutes", 45, FigureUnit.Minutes);

    public static Rule Rule { get; } = new("matches-per-week")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Bengtsson2018, Sources.Bengtsson2013, Sources.Howle2020],
        Figures = [Target, Limit, TournamentLimit, AthleteMinMinutes],
        Rising = [[Target, Limit]],
        Needs = Needs.Reports,
        Looks = Looks,
    };

    /// <summary>Matches in the seven days that end with each match.</summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        const int window = 7;
        for (var i = 0; i < plan.Matches.Length; i++)
        {
            var day = plan.Matches[i].Day!.Value;
            if (plan.WeekOf(day) is not { } week) continue;
            var count = plan.Matches.Take(i + 1).Count(match => day.DayNumber - match.Day!.Value.DayNumber < window);
            var isTournament = plan.Events.Any(item => item.Kind == EventKind.Tournament && item.Days.Contains(day));
            var limit = isTournament ? TournamentLimit : Limit;
            if (count <= figures.Number(Target)) yield return new Fine(Place.Of(week));
            else
            {
                var passed = count > figures.Number(limit) ? limit : Target;
                yield return new Breach(Place.Of(week), "many", passed == limit ? Severity.Warning : Severity.Caution, count, figures.Number(passed))
                {
                    Numbers = [count, day, figures.Number(Target), figures.Number(limit)],
                    Figure = passed.Name,
                    Beyond = count - figures.Number(Target),
                    IsForced = true,
                };
            }
        }
    }
}
