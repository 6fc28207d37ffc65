using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Events;

/// <summary>One event as the list has it.</summary>
/// <param name="Line">Physical line where it starts, 1 is the first.</param>
/// <param name="From">First day, inside. For a row that waits: as written, null where not known.</param>
/// <param name="To">Last day, inside. For a row that waits it may lie before <paramref name="From"/>.</param>
/// <param name="Only">The days that count, where not every day from first to last does; otherwise null.</param>
/// <param name="Part">The part of the days, in words ("pm", "from noon on the first day"); null for whole days.</param>
/// <param name="For">Whom, as written; null where the list does not say.</param>
/// <param name="Training">Only where the list or an answer says how much training is possible; null is not 0.</param>
/// <param name="Legs">Legs of a journey in order; empty for everything else.</param>
/// <param name="LegLines">Physical lines of further legs, which are part of this row.</param>
/// <param name="Note">What else the list says of it.</param>
/// <param name="Ask">Ids of the open questions it has.</param>
public sealed record EventRow(
    int Line,
    EventKind Kind,
    string Title,
    DateOnly? From,
    DateOnly? To,
    ValueList<DateOnly>? Only,
    string? Part,
    string? For,
    Percent? Training,
    string? Place,
    ValueList<Leg> Legs,
    ValueList<int> LegLines,
    string? Note,
    RowState State,
    ValueList<string> Ask)
{
    /// <summary>The days that may be written, from the first to the last; null while the row waits.</summary>
    public DaySpan? Days => State != RowState.Waiting && From is { } from && To is { } to && from <= to ? new DaySpan(from, to) : null;

    /// <summary>The part of the days and, where not every day counts, which do: "Wednesdays pm: 3, 10, 17 Mar"; for a journey of several legs its lines. Null for whole days.</summary>
    public string? PartInWords => LegLines.Count > 0 ? PartWords.Legs(Line, LegLines) : PartWords.Of(Part, Only);

    /// <summary>The runs of days that may be written, an event each: one, or several where not every day counts; none while the row waits.</summary>
    public IEnumerable<DaySpan> Runs
    {
        get
        {
            if (Days is not { } days) yield break;
            var start = days.First;
            foreach (var (day, next) in (Only ?? days.Days()).Zip((Only ?? days.Days()).Skip(1).Append(DateOnly.MaxValue)))
            {
                if (day.AddDays(1) == next) continue;
                yield return new DaySpan(start, day);
                start = next;
            }
        }
    }
}
