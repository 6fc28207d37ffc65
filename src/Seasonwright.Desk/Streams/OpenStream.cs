using System.Collections.Immutable;
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
        foreach (var entry in entries.Where(entry => entry.IndexInGesture == 0)) stream.stacks.Note(entry);
        if (await folder.Snapshots.NewestAsync(id, cancel: cancel) is { } snapshot && LogText.TryReadFacts(snapshot.Json) is { } facts
            && FactHash.Of(facts).Hex == snapshot.Hash && stream.Replay(facts, snapshot.Number, entries.SkipWhile(entry => entry.Number <= snapshot.Number)))
            return stream;
        if (stream.Replay(FactSet.Empty, 0, entries))
        {
            await folder.Snapshots.DiscardAsync(id, cancel);
            return stream;
        }
        throw new StoreTrouble(StoreTroubleKind.Damaged, folder.Path,
            $"The log of stream {id} in {folder.Path} does not give the plan it once gave. Nothing was changed. Restore a backup, and keep this folder for whoever helps you.");
    }

    public bool CanUndo(Actor actor) => stacks.NextUndo(actor.Person) is not null;

    public bool CanRedo(Actor actor) => stacks.NextRedo(actor.Person) is not null;

    /// <summary>Decides a gesture and keeps it. When this returns <see cref="Kept"/> it is on the disk.</summary>
    public Task<Answer> ApplyAsync(Actor actor, Gesture gesture) => InTurn(async () =>
    {
        if (await folder.Log.FindGestureAsync(Id, gesture.Id) is [.., var last]) return new Kept(last.Number);

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

    /// <summary>Takes back the person's last gesture that still stands.</summary>
    public Task<Answer> UndoAsync(Actor actor, Guid gesture) => TakeBack(actor, gesture, stacks.NextUndo, "undo-none", (append, of) => append with { Undoes = of });

    /// <summary>Brings back what the person took back last.</summary>
    public Task<Answer> RedoAsync(Actor actor, Guid gesture) => TakeBack(actor, gesture, stacks.NextRedo, "redo-none", (append, of) => append with { Redoes = of });

    /// <summary>The facts after an entry, replayed from the nearest snapshot.</summary>
    public async Task<FactSet> FactsAtAsync(long number, CancellationToken cancel = default)
    {
        if (number == State.Number) return State.Facts;
        var snapshot = await folder.Snapshots.NewestAsync(Id, number, cancel);
        var facts = snapshot is not null ? LogText.TryReadFacts(snapshot.Json) : null;
        var entries = await folder.Log.ReadFromAsync(Id, facts is null ? 0 : snapshot!.Number, cancel);
        return entries.TakeWhile(entry => entry.Number <= number)
            .Aggregate(facts ?? FactSet.Empty, (sum, entry) => sum.Evolve(LogText.ReadStep(entry.StepJson)));
    }

    /// <summary>The newest entry that filled a place, and when; null when none did.</summary>
    public async Task<(long Number, DateTimeOffset Instant)?> FilledAsync(Key place, CancellationToken cancel = default)
    {
        foreach (var entry in (await folder.Log.ReadAllAsync(Id, cancel)).Reverse())
            if (LogText.ReadStep(entry.StepJson).Changes.Any(change => change.Key == place && change.After is not null)) return (entry.Number, entry.Instant);
        return null;
    }

    /// <summary>Every gesture, newest first.</summary>
    public async Task<IReadOnlyList<HistoryLine>> HistoryAsync(CancellationToken cancel = default)
    {
        var lines = new Dictionary<long, HistoryLine>();
        var facts = FactSet.Empty;
        foreach (var group in (await folder.Log.ReadAllAsync(Id, cancel)).GroupBy(entry => entry.Gesture))
        {
            var first = group.First();
            var said = new List<string>();
            var wrote = new HashSet<Key>();
            foreach (var entry in group)
            {
                if (LogText.ReadEdit(entry.EditJson) is { } edit) said.Add(trade.Describe(facts, edit));
                var step = LogText.ReadStep(entry.StepJson);
                wrote.UnionWith(step.Changes.Select(change => change.Key));
                facts = facts.Evolve(step);
            }
            if (first.Undoes is { } undone && lines.TryGetValue(undone, out var target)) lines[undone] = target with { TakenBack = true };
            if (first.Redoes is { } redone && lines.TryGetValue(redone, out var back)) lines[redone] = back with { TakenBack = true };
            // What an undo took back is named; a redo names the same thing.
            var named = first.Undoes is { } u ? lines.GetValueOrDefault(u)?.Named : first.Redoes is { } r ? lines.GetValueOrDefault(r)?.Named : InShort(said);
            var line = first.Undoes is not null ? Sentences.Say("did.undo", named) : first.Redoes is not null ? Sentences.Say("did.redo", named) : named!;
            lines[first.Number] = new HistoryLine(first.Number, group.Last().Number, first.Author, first.Instant, line, named ?? "", false) { Wrote = wrote };
        }
        return [.. lines.Values.OrderByDescending(line => line.First)];
    }

    public void Dispose() => turn.Dispose();

    private Task<Answer> TakeBack(Actor actor, Guid gesture, Func<string, long?> next, string none, Func<StreamAppend, long, StreamAppend> mark) => InTurn(async () =>
    {
        if (await folder.Log.FindGestureAsync(Id, gesture) is [.., var last]) return new Kept(last.Number);
        if (next(actor.Person) is not { } number) return new NotDone(Refusal.Say(none, "history"));
        var since = await folder.Log.ReadFromAsync(Id, number - 1);
        var group = since.TakeWhile(entry => entry.Gesture == since[0].Gesture).Select(entry => LogText.ReadStep(entry.StepJson)).ToList();
        if (Undo.Of(State.Facts, group, out var overtaken) is not { } step)
        {
            var later = since.Skip(group.Count).Last(entry => LogText.ReadStep(entry.StepJson).Changes.Any(change => change.Key == overtaken));
            return new NotDone(Refusal.Say("undo-overtaken", overtaken.ToString()!, WordsOf(later)));
        }
        return await Append(actor, gesture, [(LogText.NoEdit, step)], append => mark(append, number));
    });

    private async Task<Answer> InTurn(Func<Task<Answer>> act)
    {
        await turn.WaitAsync();
        try
        {
            return await act();
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

    private async Task<Answer> Append(Actor actor, Guid gesture, IReadOnlyList<(string EditJson, Step Step)> kept, Func<StreamAppend, StreamAppend>? mark = null)
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
        var append = new StreamAppend(Id, State.Number, entries.ToImmutable());
        // This process holds the folder and edits come in turn, so nobody can have been faster.
        var outcome = await folder.Log.AppendAsync(new AppendRequest(gesture, actor.Person, [mark?.Invoke(append) ?? append]));
        switch (outcome)
        {
            case AppendOutcome.Appended appended:
                stacks.Note(appended.Entries[0]);
                hash = follows;
                State = new StreamState(facts, appended.Entries[^1].Number);
                if (State.Number / SnapshotEvery > append.After / SnapshotEvery) await KeepSnapshot();
                Changed?.Invoke(State);
                return new Kept(State.Number);
            case AppendOutcome.AlreadyThere there:
                return new Kept(there.Entries[^1].Number);
            case AppendOutcome.Gone:
                return new NotDone(Refusal.Say("stream-gone", Id.ToString()));
            default:
                throw new InvalidOperationException("Another writer holds this folder's log.");
        }
    }

    private async Task KeepSnapshot()
    {
        try
        {
            await folder.Snapshots.KeepAsync(Id, State.Number, LogText.Version, LogText.Of(State.Facts), hash.Hex);
        }
        catch (StoreTrouble)
        {
            // The gesture is kept; a snapshot only saves time, and the next one may fit.
        }
    }

    /// <summary>Who changed, since the state the person saw, a place this gesture reads or writes; null when nobody did.</summary>
    private async Task<Refusal?> ConflictAsync(Gesture gesture, IReadOnlyList<Accepted> accepted)
    {
        foreach (var entry in await folder.Log.ReadFromAsync(Id, gesture.BasedOn))
        {
            if (gesture.Knows.Contains(entry.Gesture)) continue;
            var changed = LogText.ReadStep(entry.StepJson).Changes.Select(change => change.Key).ToHashSet();
            foreach (var decision in accepted)
                if (decision.ConflictsWith(changed) is { } key) return Refusal.Say("changed-meanwhile", key.ToString(), await NameOf(entry.Author), WordsOf(entry));
        }
        return null;
    }

    /// <summary>A few edits are all named; of many the first ones are.</summary>
    private static string InShort(List<string> said) => said.Count <= 4 ? string.Join("; ", said)
        : Sentences.Say("did.many", string.Join("; ", said.Take(2)), said.Count - 2);

    private string WordsOf(LogEntry entry) => LogText.ReadEdit(entry.EditJson) is { } edit ? trade.Describe(State.Facts, edit) : Sentences.Say("did.undo", "");

    private async Task<string> NameOf(string person) =>
        (await folder.People.AllAsync()).FirstOrDefault(row => row.Id == person)?.DisplayName ?? "Somebody";

    private bool Replay(FactSet facts, long number, IEnumerable<LogEntry> entries)
    {
        hash = FactHash.Of(facts);
        foreach (var entry in entries)
        {
            var step = LogText.ReadStep(entry.StepJson);
            facts = facts.Evolve(step);
            hash = hash.Follow(step);
            if (hash.Hex != entry.HashAfter) return false;
            number = entry.Number;
        }
        State = new StreamState(facts, number);
        return true;
    }
}

/// <summary>Facts and the log number they stand at.</summary>
public sealed record StreamState(FactSet Facts, long Number);
