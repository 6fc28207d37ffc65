using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Web.Lists;

/// <summary>How a list was understood, in words.</summary>
internal static class HowRead
{
    public static IEnumerable<string> Of(string encoding, char? delimiter, int? headingLine, DayOrder? order, SeasonYears? years)
    {
        yield return Words.Say("list.how-encoding", encoding);
        if (delimiter is { } between) yield return Words.Say("list.how-delimiter", between switch { '\t' => Words.Say("list.tab"), ' ' => Words.Say("list.spaces"), _ => $"{between}" });
        if (headingLine is { } line) yield return Words.Say("list.how-headings", line);
        if (order is { } known) yield return Words.Say($"list.how-order.{known}");
        if (years is { } season) yield return Words.Say("list.how-years", season);
    }
}
