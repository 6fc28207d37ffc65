using System.Globalization;

namespace Seasonwright.Documents.Read.Spans;

/// <summary>Finds a part of the day in tokens: "pm", "(from noon)", "half day", "08:00-12:00", "ab 15 Uhr", "after lunch".</summary>
internal sealed class PartFinder(DayFinder at)
{
    private static readonly string[] From = ["from", "ab", "von", "after", "nach", "since", "starting", "at", "um"];
    private static readonly string[] Until = ["until", "till", "til", "bis", "before", "vor", "by"];
    private static readonly string[] Noon = ["noon", "midday", "mittag", "mittags", "lunch", "lunchtime", "midi"];
    private static readonly string[] Mornings = ["am", "morning", "mornings", "vormittag", "vormittags", "morgens", "fruh", "matin", "manana", "mattina", "formiddag", "ochtend", "rano"];
    private static readonly string[] Afternoons = ["pm", "afternoon", "afternoons", "nachmittag", "nachmittags", "tarde", "pomeriggio", "ettermiddag", "eftermiddag", "namiddag", "popoludniu"];
    private static readonly string[] Evenings = ["evening", "evenings", "abend", "abends", "night", "nachts", "soir", "sera", "noche", "kveld", "aften", "kvall", "avond", "wieczorem"];

    /// <summary>A part and the place after it and its brackets.</summary>
    public (PartOfDay Part, int Next)? Part(int i)
    {
        var start = i;
        while (at.IsSign(i, ",", "(", ";") && i - start < 2) i++;
        if ((Bounded(i) ?? Times(i) ?? Named(i)) is not var (part, next)) return null;
        return (part, at.IsSign(next, ")") && at.IsSign(i - 1, "(") ? next + 1 : next);
    }

    private (PartOfDay, int)? Bounded(int i)
    {
        var (opens, closes) = (at.IsWord(i, From), at.IsWord(i, Until));
        if (!opens && !closes) return null;
        i++;
        if (at.IsWord(i, "the", "dem", "den")) i++;
        if (at.IsWord(i, Noon))
        {
            var noon = at.IsWord(i, "noon") ? Sentences.Say("part.noon") : Sentences.Say("part.midday");
            return (Bound(noon, opens), i + 1);
        }
        if (at.IsWord(i, Evenings)) return (Bound(Sentences.Say("part.the-evening"), opens), i + 1);
        if (Time(i) is not var (time, next)) return null;
        return opens && Between(i) is { } both ? both : (Bound(Say(time), opens), next);
    }

    private (PartOfDay, int)? Times(int i) => Between(i) ?? (Time(i) is var (time, next) ? (Bound(Say(time), true), next) : null);

    private (PartOfDay, int)? Between(int i)
    {
        // "8-12 Uhr", "2-4 pm": the first figure takes its half of the day from the second.
        if ((Time(i) ?? (at.At(i) is { Kind: SpanTokenKind.Number, Length: <= 2, Value: < 24 } bare ? (new TimeOnly(bare.Value, 0), i + 1) : null)) is not var (first, next)) return null;
        if (!at.IsSign(next, "-") && !at.IsWord(next, "to", "bis", "until", "till", "and", "und")) return null;
        if (Time(next + 1) is not var (last, end)) return null;
        if (Time(i) is null && at.IsWord(end - 1, "pm") && first.Hour < 12 && first.AddHours(12) < last) first = first.AddHours(12);
        return (new PartOfDay($"{Say(first)}-{Say(last)}", PartSide.Each), end);
    }

    private (PartOfDay, int)? Named(int i)
    {
        if (at.IsWord(i, "in", "the", "am", "only", "nur") && (Is(i + 1, Mornings) || Is(i + 1, Afternoons) || Is(i + 1, Evenings))) i++;
        if (Is(i, Mornings)) return (new PartOfDay(Sentences.Say("part.am"), PartSide.Each), i + 1);
        if (at.IsWord(i, "apres") && at.IsSign(i + 1, "-") && at.IsWord(i + 2, "midi")) return (new PartOfDay(Sentences.Say("part.pm"), PartSide.Each), i + 3);
        if (Is(i, Afternoons)) return (new PartOfDay(Sentences.Say("part.pm"), PartSide.Each), i + 1);
        if (Is(i, Evenings)) return (new PartOfDay(Sentences.Say("part.evening"), PartSide.Each), i + 1);
        if (at.IsWord(i, Noon) && !at.IsWord(i, "lunch")) return (new PartOfDay(Sentences.Say("part.noon"), PartSide.Each), i + 1);
        if (at.IsWord(i, "half", "halber") && (at.IsWord(i + 1, "day", "days", "tag") || (at.IsSign(i + 1, "-") && at.IsWord(i + 2, "day", "days"))))
            return (new PartOfDay(Sentences.Say("part.half"), PartSide.Each), at.IsSign(i + 1, "-") ? i + 3 : i + 2);
        return at.IsWord(i, "halbtags", "halbtagig") ? (new PartOfDay(Sentences.Say("part.half"), PartSide.Each), i + 1) : null;

        // "Do 14.1., am 15.1.": a German "am" before a figure is no morning.
        bool Is(int place, string[] words) => at.IsWord(place, words) && !(at.IsWord(place, "am") && (at.IsNumber(place + 1) || at.Weekday(place + 1) is not null));
    }

    /// <summary>15:00, 3 pm, 3.30 pm, 15 Uhr, 19.30 Uhr, 18h, 18h30.</summary>
    private (TimeOnly, int)? Time(int i)
    {
        if (at.At(i) is not { Kind: SpanTokenKind.Number, Length: <= 2 } hour) return null;
        var (minute, next) = (0, i + 1);
        var told = false;
        if (at.IsSign(i + 1, ":", ".") && at.At(i + 1) is { Spaced: false } && at.At(i + 2) is { Kind: SpanTokenKind.Number, Length: 2, Spaced: false } minutes)
            (minute, next, told) = (minutes.Value, i + 3, at.IsSign(i + 1, ":"));
        if (at.At(next) is { Kind: SpanTokenKind.Word, Spaced: false, Length: 3 } run && run.Text[0] == 'h' && int.TryParse(run.Text.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var after))
            (minute, next, told) = (after, next + 1, true);
        else if (at.IsWord(next, "uhr", "h", "hrs", "o'clock")) (next, told) = (next + 1, true);
        else if (at.IsWord(next, "am", "pm"))
        {
            if (hour.Value is < 1 or > 12 || minute > 59) return null;
            return (new TimeOnly(hour.Value % 12 + (at.IsWord(next, "pm") ? 12 : 0), minute), next + 1);
        }
        return told && hour.Value < 24 && minute < 60 ? (new TimeOnly(hour.Value, minute), next) : null;
    }

    private static PartOfDay Bound(string words, bool opens) => new(Sentences.Say(opens ? "part.from" : "part.until", words), opens ? PartSide.Opens : PartSide.Closes);

    private static string Say(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);
}
