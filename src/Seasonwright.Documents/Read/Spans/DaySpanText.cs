using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Spans;

/// <summary>
/// Reads a span of days from words as people write them: "20 Dec - 2 Jan", "18.1.-24.1.", "8/2 to 14/2", "KW 49-50",
/// "w/c 12 Oct", "May", "Thu 25 Mar (from noon) - Mon 29 Mar", "every Wednesday in November", "2nd Saturday in May".
/// English and German words; names of months and days in more languages. Never throws on content, and never guesses:
/// what the words leave open is a doubt with the readings side by side.
/// </summary>
public static class DaySpanText
{
    /// <param name="text">A cell or a field that should hold one span.</param>
    /// <param name="season">Gives the year where none is written; null when not known.</param>
    /// <param name="order">The order of days and months in figures such as 3/4; null when not known.</param>
    public static SpanReading Read(string text, DaySpan? season, DayOrder? order = null)
    {
        var grammar = new SpanFinder(text, whole: true);
        var found = Joined(text, grammar.Spans());
        if (found.Count == 0) return SpanReading.No(SpanDoubt.Unreadable);
        var readings = found.Select(span => SpanYears.Read(span, season, order)).ToList();
        if (readings.Count > 1) return SpanReading.Of(null, null, SpanDoubt.Several, readings.Select(read => read.Days).OfType<DaySpan>());
        return readings[0] with { Part = readings[0].Part ?? grammar.PartOutside(found[0])?.Words };
    }

    /// <summary>"leave Fri 12 Feb after lunch, back Wed 17 Feb a.m.": two days that are the ends of one span are joined.</summary>
    internal static List<FoundSpan> Joined(string text, List<FoundSpan> found)
    {
        for (var i = 0; i + 1 < found.Count; i++)
        {
            if (found[i].Form is not (DaysForm { Last: null } or OpenForm { IsStart: true, Bound: DaysForm })) continue;
            var start = found[i].Form is DaysForm single ? single : (DaysForm)((OpenForm)found[i].Form).Bound;
            DaysForm? end = found[i + 1].Form switch
            {
                DaysForm { Last: null } day when Returns(text[found[i].End..found[i + 1].At]) => day,
                OpenForm { IsStart: false, Bound: DaysForm day } => day,
                _ => null,
            };
            if (end is null) continue;
            var (first, last) = (found[i], found[i + 1]);
            found[i] = new FoundSpan(new DaysForm(start.First, end.First), first.At, last.End, first.First ?? first.Each, last.Last ?? last.Each, null, first.IsTentative || last.IsTentative);
            found.RemoveAt(i + 1);
        }
        return found;
    }

    private static readonly string[] ReturnWords =
        ["back", "return", "returns", "returning", "home", "arrive", "ends", "end", "ending", "last", "zuruck", "ruckkehr", "ruckreise", "ruckfahrt", "heim", "heimreise", "heimfahrt", "ende", "endet", "bis", "until", "to", "retour", "vuelta", "regreso", "ritorno", "rientro", "terug", "terugreis", "hjem", "hjemreise", "hjemkomst", "tilbake", "tilbage", "hemresa", "powrot"];

    private static bool Returns(string between) => SpanToken.Split(between).Any(token => ReturnWords.Contains(token.Text));
}
