using System.Collections.Immutable;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules;

/// <summary>A squad's days in a plan as rules of players see them.</summary>
internal sealed class SquadPlan
{
    private readonly Dictionary<(PersonId, DateOnly), PlayerDay> days = [];

    /// <param name="span">The days that are asked about; what lies before and after is looked at where a rule looks back or ahead.</param>
    public SquadPlan(Plan plan, IEnumerable<Player> players, DaySpan span)
    {
        (Plan, Span) = (plan, span);
        Weeks = [.. plan.Weeks.Where(week => week.Days.Overlaps(span))];
        Days = [.. Weeks.SelectMany(week => week.Days.Days()).Where(span.Contains)];
        Players = [.. players.Where(player => Days.Any(day => player.WhereOn(plan.Setup.Id, day) != Whereabouts.NoMember))
            .OrderBy(player => player.Athlete.Name, StringComparer.Ordinal).ThenBy(player => player.Id.Text, StringComparer.Ordinal)];
    }

    public Plan Plan { get; }

    public DaySpan Span { get; }

    /// <summary>The season's weeks that are asked about.</summary>
    public ImmutableArray<PlanWeek> Weeks { get; }

    /// <summary>The season's days that are asked about.</summary>
    public ImmutableArray<DateOnly> Days { get; }

    /// <summary>Who is in the team on one of the days that are asked about.</summary>
    public ImmutableArray<Player> Players { get; }

    public PlayerDay DayOf(Player player, DateOnly day)
    {
        if (!days.TryGetValue((player.Id, day), out var known)) days.Add((player.Id, day), known = PlayerDay.Of(player, Plan.Season, Plan.Setup, day));
        return known;
    }

    public IEnumerable<PlayerDay> DaysOf(Player player, PlanWeek week) => week.Days.Days().Select(day => DayOf(player, day));

    /// <summary>Matches that a player is there for.</summary>
    public IEnumerable<Match> MatchesOf(Player player) => Plan.Matches.Where(match => DayOf(player, match.Day!.Value).IsThere);
}
