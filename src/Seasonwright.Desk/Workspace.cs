using System.Collections.Concurrent;
using System.Collections.Immutable;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Proposing;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Store;
using Seasonwright.Store.Log;

namespace Seasonwright.Desk;

/// <summary>The open data folder: its teams and seasons, each opened once and held for every page.</summary>
public sealed class Workspace : IAsyncDisposable
{
    private readonly ConcurrentDictionary<StreamId, Lazy<Task<OpenStream>>> streams = new();
    private readonly ConcurrentDictionary<StreamId, OpenSeason> seasons = new();

    private Workspace(DataFolder folder, TimeProvider clock)
    {
        Folder = folder;
        Clock = clock;
        Runs = new ProposalRuns(clock);
    }

    /// <exception cref="StoreTrouble">The folder is in use, cannot be written, or is not ours.</exception>
    public static async Task<Workspace> OpenAsync(string path, TimeProvider clock, CancellationToken cancel = default) =>
        new(await DataFolder.OpenAsync(path, clock, cancel), clock);

    /// <summary>Where the data lives when nobody says otherwise.</summary>
    /// <exception cref="StoreTrouble">The account has no such folder.</exception>
    public static string DefaultPath => DataFolder.Default;

    /// <summary>Opens the folder for a door that tells people instead of throwing at them.</summary>
    /// <returns>The workspace, or the sentence that says why not, which place, and how to mend it.</returns>
    public static async Task<(Workspace? Workspace, string? Trouble)> TryOpenAsync(string? path, TimeProvider clock, CancellationToken cancel = default)
    {
        try
        {
            return (await OpenAsync(path ?? DefaultPath, clock, cancel), null);
        }
        catch (StoreTrouble trouble)
        {
            return (null, trouble.Message);
        }
    }

    internal DataFolder Folder { get; }

    public TimeProvider Clock { get; }

    /// <summary>The planning engine at work.</summary>
    public ProposalRuns Runs { get; }

    public string Path => Folder.Path;

    /// <summary>Tells a second process where this one can be reached.</summary>
    public void Announce(Uri address) => Folder.Announce(address);

    /// <summary>Whoever sits at this machine.</summary>
    public Actor LocalActor => new(Folder.Local.Id);

    /// <summary>The day it is where this machine stands.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    /// <summary>Every season with its team, oldest first.</summary>
    public async Task<ImmutableArray<ListedSeason>> SeasonsAsync(CancellationToken cancel = default)
    {
        var all = await Folder.Log.StreamsAsync(cancel);
        var teams = all.Where(stream => stream.Kind == StreamKind.Team).ToDictionary(stream => stream.Id);
        return [.. all.Where(stream => stream is { Kind: StreamKind.Season, Team: not null })
            .Select(stream => new ListedSeason(IdOf(stream.Id), new TeamId(stream.Team!.Value.ToString()), teams[stream.Team.Value].Title, stream.Title))];
    }

    /// <summary>Opens a season; the same object for everyone.</summary>
    /// <returns>Null when there is no such season.</returns>
    public async Task<OpenSeason?> SeasonAsync(SeasonId id, CancellationToken cancel = default)
    {
        if (!Guid.TryParse(id.Text, out var guid)) return null;
        var stream = new StreamId(guid);
        if (seasons.TryGetValue(stream, out var open)) return open;
        var listed = (await SeasonsAsync(cancel)).FirstOrDefault(season => season.Id == id);
        if (listed is null) return null;
        var team = await TeamStreamAsync(listed.Team, cancel);
        var opened = await StreamAsync(stream, Trades.Of(id, () => new Setup(listed.Team, team.State.Facts)), null, cancel);
        return seasons.GetOrAdd(stream, _ => new OpenSeason(id, opened, listed.Team, team));
    }

    /// <summary>What the teams of the folder share; it comes into the world with its first facility.</summary>
    public Task<OpenStream> ClubStreamAsync(CancellationToken cancel = default) =>
        StreamAsync(StreamIds.Club, Trades.OfClub, new NewStream(StreamKind.Club, "Club"), cancel);

    internal Task<OpenStream> TeamStreamAsync(TeamId team, CancellationToken cancel) =>
        StreamAsync(StreamIds.Of(team), Trades.Of(team), null, cancel);

    /// <summary>Names by person id, for the history and the staff line.</summary>
    public async Task<ImmutableDictionary<string, string>> NamesAsync(CancellationToken cancel = default) =>
        (await Folder.People.AllAsync(cancel)).ToImmutableDictionary(person => person.Id, person => person.DisplayName, StringComparer.Ordinal);

    public Task NamePersonAsync(string person, string name, CancellationToken cancel = default) => Folder.People.PutAsync(person, name, cancel);

    public Task<ImmutableSortedDictionary<string, string>> PreferencesAsync(Actor actor, CancellationToken cancel = default) =>
        Folder.Preferences.OfAsync(actor.Person, cancel);

    public Task PreferAsync(Actor actor, string key, string json, CancellationToken cancel = default) =>
        Folder.Preferences.SetAsync(actor.Person, key, json, cancel);

    internal void Forget(StreamId stream)
    {
        seasons.TryRemove(stream, out _);
        streams.TryRemove(stream, out _);
    }

    public ValueTask DisposeAsync()
    {
        Runs.Dispose();
        Folder.Dispose();
        return ValueTask.CompletedTask;
    }

    private static SeasonId IdOf(StreamId stream) => new(stream.ToString());

    private async Task<OpenStream> StreamAsync(StreamId id, IStreamTrade trade, NewStream? birth, CancellationToken cancel)
    {
        // An opening that failed is tried again by the next caller.
        var opening = streams.GetOrAdd(id, key => new(() => OpenStream.OpenAsync(Folder, key, trade, birth)));
        try
        {
            return await opening.Value.WaitAsync(cancel);
        }
        catch when (opening.Value.IsFaulted)
        {
            streams.TryRemove(new(id, opening));
            throw;
        }
    }
}

/// <summary>A season as the list of seasons shows it.</summary>
public sealed record ListedSeason(SeasonId Id, TeamId Team, string TeamName, string Title);
