using Seasonwright.Store.Log;

namespace Seasonwright.Desk.Streams;

/// <summary>
/// What each person can take back and bring back in one stream. Derived from the log alone, so it survives a restart: a new
/// gesture clears the person's redo, an undo moves its target over, a redo moves it back.
/// </summary>
internal sealed class UndoStacks
{
    private readonly Dictionary<string, (Stack<long> Undo, Stack<long> Redo)> byPerson = new(StringComparer.Ordinal);

    /// <summary>Notes the first entry of a group. The group a stream began with is not taken back: without it there is no season.</summary>
    public void Note(LogEntry first)
    {
        if (first.Number == 1) return;
        var (undo, redo) = Of(first.Author);
        if (first.Undoes is not null)
        {
            if (undo.Count > 0) undo.Pop();
            redo.Push(first.Number);
        }
        else if (first.Redoes is not null)
        {
            if (redo.Count > 0) redo.Pop();
            undo.Push(first.Number);
        }
        else
        {
            undo.Push(first.Number);
            redo.Clear();
        }
    }

    /// <summary>First log number of the group the person would take back, or null.</summary>
    public long? NextUndo(string person) => Of(person).Undo.TryPeek(out var number) ? number : null;

    /// <summary>First log number of the undoing group the person would take back, or null.</summary>
    public long? NextRedo(string person) => Of(person).Redo.TryPeek(out var number) ? number : null;

    private (Stack<long> Undo, Stack<long> Redo) Of(string person)
    {
        if (!byPerson.TryGetValue(person, out var stacks)) byPerson[person] = stacks = (new(), new());
        return stacks;
    }
}
