using System.Collections.Immutable;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Lists;
using Seasonwright.Desk.Streams;
using Seasonwright.Store;
using Seasonwright.Store.Log;
using Seasonwright.Wire;

namespace Seasonwright.Desk.Seasons;

/// <summary>Bringing seasons and teams into the world and taking them out of it again.</summary>
public static class SeasonBirth
{
    /// <summary>Starts a season, and its team with it when the team is new, in one transaction.</summary>
    /// <param name="gesture">Sent again, it gives the season the first one made.</param>
    /// <param name="team">An existing team, or null for a new one.</param>
    /// <param name="setup">The first edits of a new team's setup.</param>
    /// <param name="edits">The first edits of the season; the first of them starts or adopts it.</param>
    public static async Task<(Answer Answer, SeasonId? Season)> CreateAsync(
        this Workspace workspace, Actor actor, Guid gesture, TeamId? team, IReadOnlyList<SetupEdit> setup, IReadOnlyList<SeasonEdit> edits)
    {
        // The gesture's own id names the season, so that a gesture sent twice cannot make two.
        var season = new SeasonId(gesture.ToString());
        var teamId = team ?? new TeamId(Beside(gesture, 1).ToString());
        var (seasonTrade, teamTrade) = (Trades.Of(season, () => Setup.Empty(teamId)), Trades.Of(teamId));
        var seasonEntries = Entries(seasonTrade, edits, out var seasonFacts, out var refused);
        if (refused is not null) return (new NotDone(refused), null);
        IReadOnlyList<SetupEdit> firstSetup = team is null ? [new SetTeamName(new Season(season, seasonFacts).Team.Name), .. setup] : [];
        var setupEntries = Entries(teamTrade, firstSetup, out var setupFacts, out refused);
        if (refused is not null) return (new NotDone(refused), null);

        var teamStream = new StreamId(Guid.Parse(teamId.Text));
        var appends = ImmutableArray.CreateBuilder<StreamAppend>();
        var seasonStream = new StreamId(gesture);
        if (team is null) appends.Add(new StreamAppend(teamStream, 0, setupEntries) { Creates = new NewStream(StreamKind.Team, teamTrade.TitleOf(setupFacts)) });
        appends.Add(new StreamAppend(seasonStream, 0, seasonEntries) { Creates = new NewStream(StreamKind.Season, seasonTrade.TitleOf(seasonFacts), teamStream) });
        try
        {
            switch (await workspace.Folder.Log.AppendAsync(new AppendRequest(gesture, actor.Person, appends.ToImmutable())))
            {
                case AppendOutcome.Appended:
                    return (new Kept(seasonEntries.Length), season);
                case AppendOutcome.AlreadyThere there:
                    return (new Kept(there.Entries.Last(entry => entry.Stream == seasonStream).Number), season);
                default:
                    return (new NotDone(Refusal.Say("stream-gone", season.Text)), null);
            }
        }
        catch (StoreTrouble trouble)
        {
            return (new CannotKeep(trouble.Message), null);
        }
    }

    /// <summary>The next season of the same team from this one, see <see cref="NextSeason"/>.</summary>
    public static async Task<(Answer Answer, SeasonId? Season)> NextAsync(
        this Workspace workspace, Actor actor, Guid gesture, SeasonId last, DateOnly firstCompetitionMatch, string? title)
    {
        if (await workspace.SeasonAsync(last) is not { } open) return (new NotDone(Refusal.Say("stream-gone", last.Text)), null);
        if (!Frame.PossibleDays.Contains(firstCompetitionMatch))
            return (new NotDone(Refusal.Say("day-impossible", "firstCompetitionMatch", "firstCompetitionMatch", firstCompetitionMatch)), null);
        if (!NextSeason.TryFrom(open.Season, firstCompetitionMatch, title, out var facts))
            return (new NotDone(Refusal.Say("next-season-unaligned", "match")), null);
        return await workspace.CreateAsync(actor, gesture, open.Setup.Id, [], [new AdoptSeason(facts, open.Season.Team.Title ?? open.Season.Team.Name)]);
    }

    /// <summary>
    /// Removes a team with its seasons for good, and the names of those who were staff of no other. Ask first: this is the one
    /// thing no undo brings back.
    /// </summary>
    public static async Task<Answer> RemoveTeamAsync(this Workspace workspace, Actor actor, TeamId team)
    {
        var all = await workspace.SeasonsAsync();
        var going = all.Where(season => season.Team == team).ToList();
        try
        {
            var people = await workspace.StaffAsync(going);
            people.ExceptWith(await workspace.StaffAsync(all.Except(going)));
            await workspace.ForgetAnswersAsync(team);
            await workspace.Folder.Log.RemoveAsync(StreamIds.Of(team), actor.Person);
            foreach (var person in people) await workspace.Folder.People.EraseAsync(person.Text);
        }
        catch (StoreTrouble trouble)
        {
            return new CannotKeep(trouble.Message);
        }
        // The demo's room goes with it, unless somebody has made it their own.
        if (going.Exists(season => season.Id == DemoBirth.Id) && await workspace.ClubStreamAsync() is var club && DemoBirth.Room.Equals(new Club(club.State.Facts).Facility(DemoBirth.Room.Room.Id)))
            await club.ApplyAsync(actor, new Gesture(Guid.CreateVersion7(), club.State.Number, [new RemoveFacility(DemoBirth.Room.Room.Id)]));
        foreach (var season in going) workspace.Forget(new StreamId(Guid.Parse(season.Id.Text)));
        workspace.Forget(StreamIds.Of(team));
        return new Kept(0);
    }

    private static async Task<HashSet<PersonId>> StaffAsync(this Workspace workspace, IEnumerable<ListedSeason> seasons)
    {
        HashSet<PersonId> staff = [];
        foreach (var listed in seasons)
            if (await workspace.SeasonAsync(listed.Id) is { } open) staff.UnionWith(open.Season.Staff.Select(member => member.Person));
        return staff;
    }

    /// <summary>A gesture's id with some of its last bits turned: another id, and the same one when the gesture is sent again.</summary>
    /// <param name="bits">1 is taken by the new team's id.</param>
    internal static Guid Beside(Guid gesture, byte bits)
    {
        var bytes = gesture.ToByteArray();
        bytes[^1] ^= bits;
        return new Guid(bytes);
    }

    private static ImmutableArray<NewEntry> Entries(IStreamTrade trade, IEnumerable<Edit> edits, out FactSet facts, out ValueList<Refusal>? refused)
    {
        facts = FactSet.Empty;
        refused = null;
        var hash = default(FactHash);
        var entries = ImmutableArray.CreateBuilder<NewEntry>();
        foreach (var edit in edits)
        {
            var decision = trade.Decide(facts, edit);
            if (decision is Refused { Reasons: var reasons })
            {
                refused = reasons;
                return [];
            }
            var accepted = (Accepted)decision;
            if (accepted.Step.IsNothing) continue;
            facts = facts.Evolve(accepted.Step);
            hash = hash.Follow(accepted.Step);
            entries.Add(new NewEntry(LogText.Version, LogText.Of(edit), LogText.Of(accepted.Step), hash.Hex));
        }
        return entries.ToImmutable();
    }
}
