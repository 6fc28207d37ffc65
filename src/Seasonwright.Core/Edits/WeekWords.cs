using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>How the history names weeks: "week 7", "weeks 5 to 8".</summary>
internal static class WeekWords
{
    public static string Of(Season season, WeekId first, WeekId last)
    {
        var from = season.Week(first)?.Number;
        var to = season.Week(last)?.Number;
        return from == to ? Sentences.Say("weeks.one", from) : Sentences.Say("weeks.many", from, to);
    }
}
