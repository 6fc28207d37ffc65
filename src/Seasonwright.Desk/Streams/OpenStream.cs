using System.Collections.Immutable;
using System.Text.Json;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Store;
using Seasonwright.Store.Log;
using Seasonwright.Wire;

namespace Seasonwright.Desk.Streams;

/// <summary>
/// One stream of the log, open: its facts as they stand, and the one door through which edits go in. Edits are decided one
/// after the other; memory follows only what the disk has acknowledged. Every open page listens to <see cref="Changed"/>.
/// </summary>
public sealed class OpenStream : IDisposable
{
    /// <summary>A snapshot is kept after so many entries; opening replays at most as many.</summary>
    public const int SnapshotEvery = 200;

    private readonly DataFolder folder;
    private readonly IStreamTrade trade;
    private readonly SemaphoreSlim turn = new(1, 1);
    private readonly UndoStacks stacks = new();
    private FactHash hash;

    private OpenStream(DataFolder folder, StreamId id, IStreamTrade trade)
    {
        this.folder = folder;
        this.trade = trade;
        Id = id;
    }

    public StreamId Id { get; }

    /// <summary>The facts and the log number they stand at, read together.</summary>
    public StreamState State { get; private set; } = new(FactSet.Empty, 0);

    /// <summary>Raised after every acknowledged change, on the thread that made it.</summary>
    public event Action<StreamState>? Changed;

    /// <summary>Reads the log. A snapshot only saves time: what does not fit its fingerprint is thrown away and replayed.</summary>
    /// <exception cref="StoreTrouble">The file refuses, or the log does not give the facts it says it gave.</exception>
    public static async Task<OpenStream> OpenAsync(DataFolder folder, StreamId id, IStreamTrade trade, CancellationToken cancel = default)
    {
        var stream = new OpenStream(folder, id, trade);
        var entries = await folder.Log.ReadAllAsync(id, cancel);
        stream.Note(entries);
        var snapshot = await folder.Snapshots.NewestAsync(id, cancel: cancel);
        var at = snapshot is null ? null : entries.FirstOrDefault(entry => entry.Number == snapshot.Number);
        if (FactsIn(snapshot, at) is { } facts && stream.Replay(facts, at!.Number, entries.SkipWhile(entry => entry.Number <= at.Number))) return stream;
        if (!stream.Replay(FactSet.Empty, 0, entries)) throw stream.Damage();
        if (snapshot is not null) await Helping(() => folder.Snapshots.DiscardAsync(id, cancel));
        return stream;
    }

    public bool CanUndo(Actor actor) => stacks.NextUndo(actor.Person) is not null;

    public bool CanRedo(Actor actor) => stacks.NextRedo(actor.Person) is not null;

    /// <summary>Decides a gesture and keeps it. When this returns <see cref="Kept"/> it is on the disk.</summary>
    public Task<Answer> ApplyAsync(Actor actor, Gesture gesture) => InTurn(gesture.Id, async () =>
    {
        var facts = State.Facts;
        var accepted = new List<Accepted>();
        foreach (var edit in gesture.Edits)
        {
            switch (trade.Decide(facts, edit))
            {
                case Refused refused:
                    return new NotDone(refused.Reasons);
                case Accepted decision:
                    accepted.Add(decision);
                    facts = facts.Evolve(decision.Step);
                    break;
            }
        }
        if (gesture.BasedOn < State.Number && await ConflictAsync(gesture, accepted) is { } conflict) return new NotDone(conflict);

        var kept = accepted.Zip(gesture.Edits).Where(pair => !pair.First.Step.IsNothing).Select(pair => (LogText.Of(pair.Second), pair.First.Step)).ToList();
        return kept.Count == 0 ? new Kept(State.Number) : await Append(actor, gesture.Id, kept);
    });

    /// <summary>Takes back the person's last gesture that still stands. Publications are passed over.</summary>
    public Task<Answer> UndoAsync(Actor actor, Guid gesture) => TakeBack(actor, gesture, stacks.NextUndo, "undo-none", (append, of) => append with { Undoes = of });

    /// <summary>Brings back what the person took back last.</summary>
    public Task<Answer> RedoAsync(Actor actor, Guid gesture) => TakeBack(actor, gesture, stacks.NextRedo, "redo-none", (append, of) => append with { Redoes = of });

    /// <summary>The facts after an entry, replayed from the nearest snapshot.</summary>
    public async Task<FactSet> FactsAtAsync(long number, CancellationToken cancel = default)
    {
        var now = State;
        if (number == now.Number) return now.Facts;
        var snapshot = await folder.Snapshots.NewestAsync(Id, number, cancel);
        var entries = await folder.Log.ReadFromAsync(Id, snapshot is null ? 0 : snapshot.Number - 1, cancel);
        var facts = FactsIn(snapshot, entries.FirstOrDefault());
        if (facts is not null) entries = entries[1..];
        else if (snapshot is not null) entries = await folder.Log.ReadAllAsync(Id, cancel);
        return entries.TakeWhile(entry => entry.Number <= number)
            .Aggregate(facts ?? FactSet.Empty, (sum, entry) => sum.Evolve(LogText.ReadStep(entry.StepJson)));
    }

    /// <summary>The facts as they stood at an instant.</summary>
    public async Task<FactSet> FactsOnAsync(DateTimeOffset instant, CancellationToken cancel = default) =>
        (await folder.Log.ReadAllAsync(Id, cancel)).LastOrDefault(entry => entry.Instant <= instant) is { } last ? await FactsAtAsync(last.Number, cancel) : FactSet.Empty;

    /// <summary>The newest entry that filled a place, and when; null when none did.</summary>
    public async Task<(long Number, DateTimeOffset Instant)?> FilledAsync(Key place, CancellationToken cancel = default)
    {
        foreach (var entry in (await folder.Log.ReadAllAsync(Id, cancel)).Reverse())
            if (LogText.ReadStep(entry.StepJson).Changes.Any(change => change.Key == place && change.After is not null)) return (entry.Number, entry.Instant);
        return null;
    }

    /// <summary>What each entry did, oldest first, up to and with an entry.</summary>
    public async Task<IReadOnlyList<Step>> StepsAsync(long upTo, CancellationToken cancel = default) =>
        [.. (await folder.Log.ReadAllAsync(Id, cancel)).TakeWhile(entry => entry.Number <= upTo).Select(entry => LogText.ReadStep(entry.StepJson))];

    /// <summary>Every gesture, newest first.</summary>
    public async Task<IReadOnlyList<HistoryLine>> HistoryAsync(CancellationToken cancel = default) =>
        StreamHistory.Of(await folder.Log.ReadAllAsync(Id, cancel), trade);

    public void Dispose() => turn.Dispose();

    private Task<Answer> TakeBack(Actor actor, Guid gesture, Func<string, long?> next, string none, Func<StreamAppend, long, StreamAppend> mark) => InTurn(gesture, async () =>
    {
        if (next(actor.Person) is not { } number) return new NotDone(Refusal.Say(none, "history"));
        var since = await folder.Log.ReadFromAsync(Id, number - 1);
        var group = since.TakeWhile(entry => entry.Gesture == since[0].Gesture).ToList();
        var steps = group.Where(entry => !UndoStacks.Stands(entry)).Select(entry => LogText.ReadStep(entry.StepJson));
        if (Undo.Of(State.Facts, steps, out var overtaken) is { } step)
            return await Append(actor, gesture, [(LogText.NoEdit, step)], append => mark(append, number));
        var later = since.Skip(group.Count).Last(entry => LogText.ReadStep(entry.StepJson).Changes.Any(change => change.Key == overtaken));
        return new NotDone(await Naming("undo-overtaken", overtaken!.Value, later));
    });

    /// <summary>One gesture after the other; a gesture that is in the log already gets its first answer.</summary>
    /// <param name="act">Null when the log had moved on: the gesture is decided again on top of it.</param>
    private async Task<Answer> InTurn(Guid gesture, Func<Task<Answer?>> act)
    {
        await turn.WaitAsync();
        try
        {
            while (true)
            {
                if (await folder.Log.FindGestureAsync(Id, gesture) is [.., var last])
                {
                    if (last.Number > State.Number) await CatchUpAsync();
                    return new Kept(last.Number);
                }
                if (await act() is { } answer) return answer;
                await CatchUpAsync();
            }
        }
        catch (StoreTrouble trouble)
        {
            return new CannotKeep(trouble.Message);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <returns>Null when the log holds more than the state.</returns>
    private async Task<Answer?> Append(Actor actor, Guid gesture, IReadOnlyList<(string EditJson, Step Step)> kept, Func<StreamAppend, StreamAppend>? mark = null)
    {
        var facts = State.Facts;
        var follows = hash;
        var entries = ImmutableArray.CreateBuilder<NewEntry>();
        foreach (var (editJson, step) in kept)
        {
            facts = facts.Evolve(step);
            follows = follows.Follow(step);
            entries.Add(new NewEntry(LogText.Version, editJson, LogText.Of(step), follows.Hex));
        }
        var title = trade.TitleOf(facts);
        var append = new StreamAppend(Id, State.Number, entries.ToImmutable()) { Title = title == trade.TitleOf(State.Facts) ? null : title };
        switch (await folder.Log.AppendAsync(new AppendRequest(gesture, actor.Person, [mark?.Invoke(append) ?? append])))
        {
            case AppendOutcome.Appended appended:
                stacks.Note(appended.Entries);
                hash = follows;
                State = new StreamState(facts, appended.Entries[^1].Number);
                if (State.Number / SnapshotEvery > append.After / SnapshotEvery)
                    await Helping(() => folder.Snapshots.KeepAsync(Id, State.Number, LogText.Version, LogText.Of(State.Facts), hash.Hex));
                Changed?.Invoke(State);
                return new Kept(State.Number);
            case AppendOutcome.Gone:
                return new NotDone(Refusal.Say("stream-gone", Id.ToString()));
            default:
                return null;
        }
    }

    /// <summary>Takes over what the log holds beyond the state: an append whose answer was lost, or another writer's.</summary>
    private async Task CatchUpAsync()
    {
        var since = await folder.Log.ReadFromAsync(Id, State.Number);
        if (since.IsEmpty) return;
        if (!Replay(State.Facts, State.Number, since)) throw Damage();
        Note(since);
        Changed?.Invoke(State);
    }

    /// <summary>Who changed, since the state the person saw, a place this gesture reads or writes; null when nobody did.</summary>
    private async Task<Refusal?> ConflictAsync(Gesture gesture, IReadOnlyList<Accepted> accepted)
    {
        foreach (var entry in (await folder.Log.ReadFromAsync(Id, gesture.BasedOn)).Reverse())
        {
            if (gesture.Knows.Contains(entry.Gesture)) continue;
            var changed = LogText.ReadStep(entry.StepJson).Changes.Select(change => change.Key).ToHashSet();
            foreach (var decision in accepted)
                if (decision.ConflictsWith(changed) is { } key) return await Naming("changed-meanwhile", key, entry);
        }
        return null;
    }

    /// <summary>A refusal because of what somebody did, in the words of the history.</summary>
    private async Task<Refusal> Naming(string id, Key place, LogEntry entry)
    {
        var who = (await folder.People.AllAsync()).FirstOrDefault(row => row.Id == entry.Author)?.DisplayName ?? Sentences.Say("somebody");
        var what = (await HistoryAsync()).First(line => line.First <= entry.Number && entry.Number <= line.Last).Words;
        return Refusal.Say(id, place.ToString(), who, what);
    }

    private void Note(IEnumerable<LogEntry> entries)
    {
        foreach (var group in entries.GroupBy(entry => entry.Gesture)) stacks.Note([.. group]);
    }

    private bool Replay(FactSet facts, long number, IEnumerable<LogEntry> entries)
    {
        var follows = FactHash.Of(facts);
        foreach (var entry in entries)
        {
            if (StepOf(entry) is not { } step) return false;
            facts = facts.Evolve(step);
            follows = follows.Follow(step);
            if (follows.Hex != entry.HashAfter) return false;
            number = entry.Number;
        }
        (hash, State) = (follows, new StreamState(facts, number));
        return true;
    }

    /// <summary>The step, or null where the log is damaged.</summary>
    private static Step? StepOf(LogEntry entry)
    {
        try
        {
            return LogText.ReadStep(entry.StepJson);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>What a snapshot holds; null unless it is what the log says stood at its entry.</summary>
    private static FactSet? FactsIn(Snapshot? snapshot, LogEntry? at) =>
        snapshot is not null && at?.Number == snapshot.Number && at.HashAfter == snapshot.Hash
        && LogText.TryReadFacts(snapshot.Json) is { } facts && FactHash.Of(facts).Hex == snapshot.Hash ? facts : null;

    /// <summary>Keeps or throws away a snapshot. It only saves time: what the disk refuses here is tried again another day.</summary>
    private static async Task Helping(Func<Task> work)
    {
        try
        {
            await work();
        }
        catch (StoreTrouble)
        {
        }
    }

    private StoreTrouble Damage() => new(StoreTroubleKind.Damaged, folder.Path,
        $"The log of stream {Id} in {folder.Path} does not give the plan it once gave. Nothing was changed. Restore a backup, and keep this folder for whoever helps you.");
}

/// <summary>Facts and the log number they stand at.</summary>
public sealed record StreamState(FactSet Facts, long Number);
