namespace Seasonwright.Documents.Read.Spans;

/// <summary>What a part of the day does to the days it stands beside.</summary>
internal enum PartSide
{
    /// <summary>That part of each day.</summary>
    Each,

    /// <summary>It starts there: "from noon".</summary>
    Opens,

    /// <summary>It ends there: "until 11:00".</summary>
    Closes,
}

/// <summary>A part of the day in words, for instance "pm", "from noon", "08:00-12:00".</summary>
internal sealed record PartOfDay(string Words, PartSide Side)
{
    /// <summary>The words for a whole span, from a part beside its first day, one beside its last, and one for each day.</summary>
    public static string? Of(PartOfDay? first, PartOfDay? last, PartOfDay? each, bool oneDay)
    {
        if (oneDay) return (each ?? first ?? last)?.Words;
        var opens = first is null ? null : first.Side != PartSide.Each ? first.Words : IsLate(first.Words) ? Sentences.Say("part.from-midday") : null;
        var closes = last is null ? null : last.Side != PartSide.Each ? last.Words : last.Words == Sentences.Say("part.am") ? Sentences.Say("part.until-midday") : null;
        return (opens, closes) switch
        {
            ({ } from, { } until) => Sentences.Say("part.both", from, until),
            ({ } from, null) => Sentences.Say("part.first", from),
            (null, { } until) => Sentences.Say("part.last", until),
            _ => each?.Words,
        };
    }

    private static bool IsLate(string words) => words == Sentences.Say("part.pm") || words == Sentences.Say("part.evening");
}
