using Seasonwright.Core.Edits;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;
using Seasonwright.Desk.Streams;
using Seasonwright.Store;
using Seasonwright.Store.Log;

namespace Seasonwright.Desk.Demo;

/// <summary>Puts the demo into a data folder.</summary>
public static class DemoBirth
{
    // One id in every folder: the log takes a gesture once, and never again after its season was removed.
    private static readonly Guid Gesture = Guid.ParseExact(NaturalIds.Season(DemoSeason.TeamName, DateOnly.MinValue).Text, "N");

    /// <summary>The demo's season in a workspace.</summary>
    public static SeasonId Id { get; } = new(Gesture.ToString());

    /// <summary>The invented club's one room. The demo's sessions are in it once somebody puts them there.</summary>
    internal static Facility Room { get; } = new(new Room(new("strength-room"), "Strength room", 24, 2,
    [
        .. new[] { DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday }.SelectMany(day => new[] { new RoomHours(day, new(8, 0), new(12, 0)), new RoomHours(day, new(15, 0), new(21, 0)) }),
        new(DayOfWeek.Saturday, new(9, 0), new(13, 0)),
    ]));

    /// <summary>
    /// Adds the demo, with a team of its own, to a folder that holds no season and has never held the demo. Asking again
    /// changes nothing; <see cref="SeasonBirth.RemoveTeamAsync"/> takes it away for good.
    /// </summary>
    /// <returns>The demo's season where the folder holds it, also when it was there before; else why there is none.</returns>
    public static async Task<(Answer Answer, SeasonId? Season)> AddDemoAsync(this Workspace workspace, Actor actor, DateOnly today)
    {
        try
        {
            var held = await workspace.SeasonsAsync();
            // Asked at every start: what is there already is neither made nor opened again, and gets its first answer.
            if (await workspace.Folder.Log.FindGestureAsync(new StreamId(Gesture), Gesture) is [.., var last]) return (new Kept(last.Number), Id);
            if (held.Length > 0) return (new NotDone(Refusal.Say("demo-late", "team")), null);
            var demo = DemoSeason.Make(DemoSeason.AnchorFor(today));
            var (answer, season) = await workspace.CreateAsync(actor, Gesture, null, demo.Setup, demo.Edits);
            if (season is not null)
            {
                var club = await workspace.ClubStreamAsync();
                if (club.State.Number == 0) await club.ApplyAsync(actor, new Gesture(Gesture, 0, [new SetFacility(Room)]));
                foreach (var (person, name) in demo.People) await workspace.NamePersonAsync(person.Text, name);
                await workspace.AddSquadAsync(actor, DemoSeason.AnchorFor(today), (await workspace.SeasonsAsync()).First(listed => listed.Id == season).Team);
            }
            return (answer, season);
        }
        catch (StoreTrouble trouble)
        {
            return (new CannotKeep(trouble.Message), null);
        }
    }

    private static async Task AddSquadAsync(this Workspace workspace, Actor actor, DateOnly first, TeamId team)
    {
        var athletes = workspace.Folder.Athletes;
        var squad = DemoSquad.Of(first, team, new PersonId(actor.Person)).ToList();
        await athletes.PutAsync(StreamIds.Of(team), [.. squad.Select(player => (player.Athlete, (IReadOnlyList<Membership>)player.Memberships))]);
        foreach (var player in squad)
        {
            foreach (var report in player.Reports) await athletes.AppendAsync(report);
            foreach (var absence in player.Absences) await athletes.AppendAsync(absence);
            foreach (var weighing in player.Weighings) await athletes.AppendAsync(weighing);
            foreach (var lift in player.Lifts) await athletes.AppendAsync(lift);
            foreach (var run in player.Runs) await athletes.AppendAsync(run);
            if (player.Groups.Count > 0) await athletes.PutGroupsAsync(player.Id, new StreamId(Gesture), player.Groups);
        }
    }
}
