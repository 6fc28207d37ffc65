using System.Collections.Immutable;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Squad;

/// <summary>A player's week with the team, as far as it is otherwise than the squad's.</summary>
/// <param name="Back">The player comes back in it; null where not.</param>
public sealed record PlayerWeek(Player Player, ImmutableArray<PlayerDay> Days, ComingBack? Back)
{
    /// <summary>Sessions that are otherwise for the player, by day and start.</summary>
    public IEnumerable<SessionFit> Otherwise => Days.Where(day => day.Standing.Availability.State != AvailabilityState.Out).SelectMany(day => day.Fits).Where(fit => fit.Kind != FitKind.AsPlanned);

    /// <summary>Days that are spent elsewhere.</summary>
    public IEnumerable<PlayerDay> Away => Days.Where(day => day.Where is Whereabouts.Absent or Whereabouts.OtherSquad);

    /// <summary>Days on which the player is with the team and does nothing of it.</summary>
    public IEnumerable<PlayerDay> Out => Days.Where(day => day.Where == Whereabouts.WithTeam && day.Standing.Availability.State == AvailabilityState.Out);

    /// <summary>What becomes of a session for the player; null where nothing is otherwise.</summary>
    public SessionFit? For(Session session) => (Back?.First ?? []).Concat(Days.SelectMany(day => day.Fits)).FirstOrDefault(fit => fit.Session.Id == session.Id && fit.Kind != FitKind.AsPlanned);

    private bool IsOtherwise => Back is not null || Away.Any() || Out.Any() || Otherwise.Any() || Days.Any(day => day is { IsAway: false, Standing.Availability.State: AvailabilityState.Modified });

    /// <summary>Who of a squad has another week than the others, in the order given; who is in no squad of the team all week is not among them.</summary>
    public static IEnumerable<PlayerWeek> Otherwises(IEnumerable<Player> players, Season season, Setup setup, SeasonWeek week) => players
        .Where(player => player.Memberships.Any(one => one.Team == setup.Id && one.Days.First <= week.Days.Last && one.Days.Last >= week.Days.First))
        .Select(player => new PlayerWeek(player, PlayerDay.Of(player, season, setup, week), ComingBack.In(player, season, setup, week)))
        .Where(one => one.IsOtherwise);
}
