using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Spans;

/// <summary>A span found in a text.</summary>
/// <param name="At">Where it starts in the text, together with the words that belong to it ("from", "every").</param>
/// <param name="End">The place after its last character.</param>
/// <param name="First">The part of the day beside its first day, <paramref name="Last"/> beside its last, <paramref name="Each"/> for every day.</param>
internal sealed record FoundSpan(SpanForm Form, int At, int End, PartOfDay? First, PartOfDay? Last, PartOfDay? Each, bool IsTentative)
{
    /// <summary>Whether only a month or a season's week is named, so that it may as well be part of a sentence.</summary>
    public bool IsVague => Form is MonthsForm or EveryForm { Within: null };

    /// <summary>The same for deciding a whole column.</summary>
    public WrittenDate Written => Form.Written with { Start = At, End = End };

    /// <summary>Reads it with its first day in a year.</summary>
    public SpanReading In(int year, DayOrder order)
    {
        var read = Form.In(year, order);
        return read with { Part = PartOfDay.Of(First, Last, Each, read.From == read.To || Form is OpenForm), IsTentative = IsTentative };
    }
}
