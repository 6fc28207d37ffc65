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
    private readonly UndoStacks stacks;
    private readonly NewStream? birth;
    private FactHash hash;

    private OpenStream(DataFolder folder, StreamId id, IStreamTrade trade, NewStream? birth)
    {
        this.folder = folder;
        this.trade = trade;
        this.birth = birth;
        stacks = new(keepsFirst: birth is null);
        Id = id;
    }

    public StreamId Id { get; }

    /// <summary>The facts and the log number they stand at, read together.</summary>
    public StreamState State { get; private set; } = new(FactSet.Empty, 0);

    /// <summary>Raised after every acknowledged change, on the thread that made it.</summary>
    public event Action<StreamState>? Changed;

    /// <summary>Reads the log. A snapshot only saves time: what does not fit its fingerprint is thrown away and replayed.</summary>
    /// <param name="birth">How the stream comes into the world with its first gesture; null for one that is there.</param>
    /// <exception cref="StoreTrouble">The file refuses, or the log does not give the facts it says it gave.</exception>
    public static async Task<OpenStream> OpenAsync(DataFolder folder, StreamId id, IStreamTrade trade, NewStream? birth = null, CancellationToken cancel = default)
    {
        var stream = new OpenStream(folder, id, trade, birth);
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
        var (refused, kept) = await DecideAsync(gesture);
        return refused is not null ? refused : kept.Count == 0 ? new Kept(State.Number) : await Append(actor, gesture.Id, [Prepare(kept)]);
    });

    /// <summary>
    /// Decides one gesture over several streams and keeps it in one transaction: each part is done, or none is, whichever of the
    /// streams refuses.
    /// </summary>
    /// <param name="gesture">Sent again, it gets its first answer.</param>
    /// <param name="parts">Each stream once, with what is asked of it.</param>
    public static Task<Answer> ApplyTogetherAsync(Actor actor, Guid gesture, IReadOnlyList<(OpenStream Stream, long BasedOn, IReadOnlyList<Edit> Edits)> parts) => InTurn(gesture, [.. parts.Select(part => part.Stream)], async () =>
    {
        List<Pending> pending = [];
        foreach (var (stream, basedOn, edits) in parts)
        {
            var (refused, kept) = await stream.DecideAsync(new Gesture(gesture, basedOn, edits));
            if (refused is not null) return refused;
            if (kept.Count > 0) pending.Add(stream.Prepare(kept));
        }
        return pending.Count == 0 ? new Kept(parts[0].Stream.State.Number) : await Append(actor, gesture, pending);
    });

    /// <summary>The steps that a gesture asks for; or why it is not done.</summary>
    private async Task<(NotDone? Refused, List<(string EditJson, Step Step)> Kept)> DecideAsync(Gesture gesture)
    {
        var facts = State.Facts;
        var accepted = new List<Accepted>();
        foreach (var edit in gesture.Edits)
        {
            switch (trade.Decide(facts, edit))
            {
                case Refused refused:
                    return (new NotDone(refused.Reasons), []);
                case Accepted decision:
                    accepted.Add(decision);
                    facts = facts.Evolve(decision.Step);
                    break;
            }
        }
        if (gesture.BasedOn < State.Number && await ConflictAsync(gesture, accepted) is { } conflict) return (new NotDone(conflict), []);
        return (null, [.. accepted.Zip(gesture.Edits).Where(pair => !pair.First.Step.IsNothing).Select(pair => (LogText.Of(pair.Second), pair.First.Step))]);
    }

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

    /// <summary>
    /// Takes back a gesture over several streams, in one transaction. In each of them that has it, it must be what the person would
    /// take back next; else nothing is taken back.
    /// </summary>
    /// <param name="undone">The gesture to take back.</param>
    public static Task<Answer> UndoTogetherAsync(Actor actor, Guid gesture, Guid undone, IReadOnlyList<OpenStream> streams) => InTurn(gesture, streams, async () =>
    {
        List<Pending> pending = [];
        foreach (var stream in streams)
        {
            if (await stream.folder.Log.FindGestureAsync(stream.Id, undone) is not [var first, ..]) continue;
            if (stream.stacks.NextUndo(actor.Person) != first.Number) return new NotDone(Refusal.Say("undo-apart", "history", stream.trade.TitleOf(stream.State.Facts)));
            var (refused, back) = await stream.BackAsync(first.Number);
            if (refused is not null) return refused;
            pending.Add(back! with { Append = back.Append with { Undoes = first.Number } });
        }
        return pending.Count == 0 ? new NotDone(Refusal.Say("undo-none", "history")) : await Append(actor, gesture, pending);
    });

    /// <summary>What the person would take back next, and when it was done; null where there is nothing.</summary>
    public async Task<LogEntry?> NextUndoAsync(Actor actor) =>
        stacks.NextUndo(actor.Person) is { } number ? (await folder.Log.ReadFromAsync(Id, number - 1)).FirstOrDefault() : null;

    private Task<Answer> TakeBack(Actor actor, Guid gesture, Func<string, long?> next, string none, Func<StreamAppend, long, StreamAppend> mark) => InTurn(gesture, async () =>
    {
        if (next(actor.Person) is not { } number) return new NotDone(Refusal.Say(none, "history"));
        var (refused, back) = await BackAsync(number);
        return refused is not null ? refused : await Append(actor, gesture, [back! with { Append = mark(back.Append, number) }]);
    });

    /// <summary>What takes a gesture back, by its first log number; or who changed since what it wrote.</summary>
    private async Task<(NotDone? Refused, Pending? Back)> BackAsync(long number)
    {
        var since = await folder.Log.ReadFromAsync(Id, number - 1);
        var group = since.TakeWhile(entry => entry.Gesture == since[0].Gesture).ToList();
        var steps = group.Where(entry => !UndoStacks.Stands(entry)).Select(entry => LogText.ReadStep(entry.StepJson));
        if (Undo.Of(State.Facts, steps, out var overtaken) is { } step) return (null, Prepare([(LogText.NoEdit, step)]));
        var later = since.Skip(group.Count).Last(entry => LogText.ReadStep(entry.StepJson).Changes.Any(change => change.Key == overtaken));
        return (new NotDone(await Naming("undo-overtaken", overtaken!.Value, later)), null);
    }

    private Task<Answer> InTurn(Guid gesture, Func<Task<Answer?>> act) => InTurn(gesture, [this], act);

    /// <summary>One gesture after the other; a gesture that is in the log already gets its first answer.</summary>
    /// <param name="act">Null when the log had moved on: the gesture is decided again on top of it.</param>
    private static async Task<Answer> InTurn(Guid gesture, IReadOnlyList<OpenStream> streams, Func<Task<Answer?>> act)
    {
        // Always in one order, so that two gestures never wait for each other.
        var ordered = streams.OrderBy(stream => stream.Id.Value).ToList();
        foreach (var stream in ordered) await stream.turn.WaitAsync();
        try
        {
            while (true)
            {
                Answer? first = null;
                foreach (var stream in streams)
                {
                    if (await stream.folder.Log.FindGestureAsync(stream.Id, gesture) is not [.., var last]) continue;
                    if (last.Number > stream.State.Number) await stream.CatchUpAsync();
                    first ??= new Kept(last.Number);
                }
                if ((first ?? await act()) is { } answer) return answer;
                foreach (var stream in streams) await stream.CatchUpAsync();
            }
        }
        catch (StoreTrouble trouble)
        {
            return new CannotKeep(trouble.Message);
        }
        finally
        {
            foreach (var stream in ordered) stream.turn.Release();
        }
    }

    /// <summary>What is about to be appended to a stream, and what it holds then.</summary>
    private sealed record Pending(OpenStream Stream, FactSet Facts, FactHash Hash, StreamAppend Append);

    private Pending Prepare(IReadOnlyList<(string EditJson, Step Step)> kept)
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
        return new(this, facts, follows, new StreamAppend(Id, State.Number, entries.ToImmutable())
        {
            Creates = State.Number == 0 ? birth : null,
            Title = title == trade.TitleOf(State.Facts) ? null : title,
        });
    }

    /// <returns>Null when the log holds more than the state.</returns>
    private static async Task<Answer?> Append(Actor actor, Guid gesture, IReadOnlyList<Pending> pending)
    {
        switch (await pending[0].Stream.folder.Log.AppendAsync(new AppendRequest(gesture, actor.Person, [.. pending.Select(one => one.Append)])))
        {
            case AppendOutcome.Appended appended:
                foreach (var one in pending) await one.Stream.TakeAsync(one, [.. appended.Entries.Where(entry => entry.Stream == one.Stream.Id).OrderBy(entry => entry.Number)]);
                foreach (var one in pending) one.Stream.Changed?.Invoke(one.Stream.State);
                return new Kept(pending[0].Stream.State.Number);
            case AppendOutcome.Gone gone:
                return new NotDone(Refusal.Say("stream-gone", gone.Removal.Stream.ToString()));
            default:
                return null;
        }
    }

    private async Task TakeAsync(Pending pending, IReadOnlyList<LogEntry> entries)
    {
        stacks.Note(entries);
        hash = pending.Hash;
        State = new StreamState(pending.Facts, entries[^1].Number);
        if (State.Number / SnapshotEvery > pending.Append.After / SnapshotEvery)
            await Helping(() => folder.Snapshots.KeepAsync(Id, State.Number, LogText.Version, LogText.Of(State.Facts), hash.Hex));
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
