using System.Collections.Immutable;
using Seasonwright.Core.Edits;
using Seasonwright.Store.Log;
using Seasonwright.Wire;

namespace Seasonwright.Desk.Streams;

/// <summary>
/// What each person can take back and bring back in one stream. Derived from the log alone, so it survives a restart: a new
/// gesture clears the person's redo, an undo moves its target over, a redo moves it back. A publication is passed over: others
/// have seen it. One writer notes, any thread asks.
/// </summary>
/// <param name="keepsFirst">The gesture that the stream began with is not taken back: without it there is no season.</param>
internal sealed class UndoStacks(bool keepsFirst = true)
{
    private static readonly (ImmutableStack<long> Undo, ImmutableStack<long> Redo) None = ([], []);

    // Swapped whole, so that a page asks a state that stood.
    private volatile ImmutableDictionary<string, (ImmutableStack<long> Undo, ImmutableStack<long> Redo)> byPerson =
        ImmutableDictionary.Create<string, (ImmutableStack<long> Undo, ImmutableStack<long> Redo)>(StringComparer.Ordinal);

    /// <summary>Whether an entry is never taken back; the rest of its group may be.</summary>
    public static bool Stands(LogEntry entry) => LogText.Is<Publish>(entry.EditJson);

    /// <summary>Notes a group's entries.</summary>
    public void Note(IReadOnlyCollection<LogEntry> group)
    {
        var first = group.First();
        if (keepsFirst && first.Number == 1 || group.All(Stands)) return;
        var (undo, redo) = Of(first.Author);
        byPerson = byPerson.SetItem(first.Author,
            first.Undoes is not null ? (Less(undo), redo.Push(first.Number))
            : first.Redoes is not null ? (undo.Push(first.Number), Less(redo))
            : (undo.Push(first.Number), []));
    }

    /// <summary>First log number of the group the person would take back, or null.</summary>
    public long? NextUndo(string person) => Top(Of(person).Undo);

    /// <summary>First log number of the undoing group the person would take back, or null.</summary>
    public long? NextRedo(string person) => Top(Of(person).Redo);

    private (ImmutableStack<long> Undo, ImmutableStack<long> Redo) Of(string person) => byPerson.GetValueOrDefault(person, None);

    private static long? Top(ImmutableStack<long> stack) => stack.IsEmpty ? null : stack.Peek();

    private static ImmutableStack<long> Less(ImmutableStack<long> stack) => stack.IsEmpty ? stack : stack.Pop();
}
