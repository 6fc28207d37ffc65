using System.Collections.Immutable;
using Seasonwright.Store.Log;

namespace Seasonwright.Desk.Streams;

/// <summary>
/// What each person can take back and bring back in one stream. Derived from the log alone, so it survives a restart: a new
/// gesture clears the person's redo, an undo moves its target over, a redo moves it back. One writer notes, any thread asks.
/// </summary>
internal sealed class UndoStacks
{
    private static readonly (ImmutableStack<long> Undo, ImmutableStack<long> Redo) None = ([], []);

    // Swapped whole, so that a page asks a state that stood.
    private volatile ImmutableDictionary<string, (ImmutableStack<long> Undo, ImmutableStack<long> Redo)> byPerson =
        ImmutableDictionary.Create<string, (ImmutableStack<long> Undo, ImmutableStack<long> Redo)>(StringComparer.Ordinal);

    /// <summary>Notes the first entry of a group. The group a stream began with is not taken back: without it there is no season.</summary>
    public void Note(LogEntry first)
    {
        if (first.Number == 1) return;
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
