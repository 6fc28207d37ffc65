using Seasonwright.Core;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>A row before the coach's choice is known.</summary>
internal sealed record DraftRow(string Key, string Sheet, string Label, RowRole Guess, List<SheetEntry> Entries)
{
    /// <summary>In the role chosen, without what tells of health.</summary>
    public SheetRow Offered(SheetMap map, Legend legend) => new(Key, Sheet, HealthWords.In(Label) ? Key : Label, map.Roles.GetValueOrDefault(Key, Guess), Entries.Where(entry => !HealthWords.In(entry.Text)).ToValueList(), ValueList<SheetMatch>.Empty) { Meanings = Entries.Select(entry => entry.Text).Distinct(StringComparer.OrdinalIgnoreCase).Where(text => legend[text] is not null).ToDictionary(text => text, legend.Meaning, StringComparer.OrdinalIgnoreCase) };
}
