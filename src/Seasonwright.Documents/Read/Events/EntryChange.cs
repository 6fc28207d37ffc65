using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Events;

/// <summary>What a list does to one event or one test day.</summary>
/// <param name="Kind">Added, vanished, moved, changed, unchanged or asked.</param>
/// <param name="Row">The list's row; null for a vanished entry.</param>
/// <param name="Known">The entry as it was; null for an added one.</param>
/// <param name="Entry">The entry as it shall be, without an id of its own if it is added; null while nothing may be written.</param>
/// <param name="Fields">What differs, field by field.</param>
/// <param name="Ask">Ids of open questions of the comparison.</param>
public sealed record EntryChange<TRow, TEntry>(ChangeKind Kind, TRow? Row, TEntry? Known, TEntry? Entry, ValueList<FieldChange> Fields, ValueList<string> Ask)
    where TRow : class
    where TEntry : class
{
    /// <summary>Whether the season is to be changed for it; an unchanged entry may still have to remember what the list says now.</summary>
    public bool IsWritten => Entry is not null && !Entry.Equals(Known);
}
