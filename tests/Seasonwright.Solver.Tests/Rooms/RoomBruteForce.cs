using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// The best layout of a small room by trying all of them. What is allowed is judged by Core's clashes; what a layout is worth is
/// written out once more, as in docs/planning-choices.md.
/// </summary>
internal sealed class RoomBruteForce(RoomWeek week)
{
    private readonly List<(RoomTeam Team, RoomAsk Ask)> open = [.. week.Asks.Where(one => one.Ask.Place?.IsLocked != true)];
    private (int Missed, int Unlike, long Cost) best = (int.MaxValue, 0, 0);

    private readonly Dictionary<SessionId, List<RoomPlace>> alone = [];

    /// <summary>Layouts without a clash beyond those of what is locked.</summary>
    public long Tried { get; private set; }

    public (int Missed, int Unlike, long Cost) Best()
    {
        var empty = week.With(_ => null);
        foreach (var (_, ask) in open) alone[ask.Id] = [.. Everywhere(ask).Where(place => RoomClash.Of(empty.With(ask.Id, place)).Count == 0)];
        Try(week.With(ask => ask.Place?.IsLocked == true ? ask.Place : null), 0, 0, []);
        return best;
    }

    /// <summary>The square of the share that each team misses, in whole thousandths.</summary>
    public int Unlike(Func<RoomTeam, int> missed) =>
        week.Teams.Sum(team => (int)Math.Round(1000m * missed(team) * missed(team) / (team.Sessions.Count * team.Sessions.Count), MidpointRounding.AwayFromZero));

    private IEnumerable<RoomPlace> Everywhere(RoomAsk ask)
    {
        for (var day = week.First; day <= week.Span.Last; day = day.AddDays(1))
            for (var half = 0; half < 48 && half * 30 + ask.Minutes.Value <= 24 * 60; half++) yield return new(day, new(half / 2, half % 2 * 30));
    }

    private void Try(RoomWeek so, int at, long cost, Dictionary<TeamId, int> missed)
    {
        if (at == open.Count)
        {
            Tried++;
            var found = (missed.Values.Sum(), Unlike(team => missed.GetValueOrDefault(team.Id)), cost);
            if (found.CompareTo(best) < 0) best = found;
            return;
        }
        var (team, ask) = open[at];
        Try(so, at + 1, cost + (ask.Place is null ? 0 : 2), new(missed) { [team.Id] = missed.GetValueOrDefault(team.Id) + 1 });
        foreach (var place in alone[ask.Id])
        {
            var next = so.With(ask.Id, place);
            // Where locked sessions clash already, nothing may be added to it; elsewhere nothing may clash.
            if (!RoomClash.Of(next).Any(clash => clash.Sessions.Contains(ask.Id))) Try(next, at + 1, cost + Price(team, ask, place), missed);
        }
    }

    private static int Price(RoomTeam team, RoomAsk ask, RoomPlace place)
    {
        var (from, to) = (60 * place.Start.Hour + place.Start.Minute, 60 * place.Start.Hour + place.Start.Minute + ask.Minutes.Value);
        var price = ask.Start is { } start ? Math.Abs(60 * start.Hour + start.Minute - from) / 30 : 0;
        if (ask.Day is { } day) price += 3 * Math.Abs(day.DayNumber - place.Day.DayNumber);
        foreach (var practice in team.Practices ?? [])
        {
            var begins = 60 * practice.Start.Hour + practice.Start.Minute;
            // A hurry is counted once, be it before or after.
            if (practice.Day == place.Day && (begins >= to && begins - to < 15 || from >= begins + practice.Minutes.Value && from - begins - practice.Minutes.Value < 15)) return price + 2 + Moves();
        }
        return price + Moves();

        int Moves() => ask.Place is { } stands && (stands.Day != place.Day || stands.Start != place.Start) ? 2 : 0;
    }
}
