using System.Globalization;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Events;

/// <summary>The part of a row's days, in words: of the day, and of the days where not every one counts.</summary>
internal static class PartWords
{
    /// <summary>"pm", "Wednesdays pm: 3, 10, 17 Mar", "3, 10, 17 Mar, from 15:00"; null for whole days.</summary>
    public static string? Of(string? part, ValueList<DateOnly>? only)
    {
        if (only is null) return part;
        var days = string.Join(", ", only.GroupBy(day => (day.Year, day.Month)).Select(month => $"{string.Join(", ", month.Select(day => day.Day))} {month.First().ToString("MMM", CultureInfo.InvariantCulture)}"));
        var weekdays = only.Select(day => day.DayOfWeek).Distinct().ToList();
        if (weekdays.Count > 1) return part is null ? days : Sentences.Say("part.of-days", days, part);
        return part is null ? Sentences.Say("part.weekdays", weekdays[0], days) : Sentences.Say("part.of-weekdays", weekdays[0], part, days);
    }

    /// <summary>"5 legs: lines 2-6".</summary>
    public static string Legs(int line, ValueList<int> more)
    {
        var lines = more.Prepend(line).ToList();
        var isRun = lines[^1] - lines[0] == lines.Count - 1;
        return Sentences.Say("part.legs", lines.Count, isRun ? string.Create(CultureInfo.InvariantCulture, $"{lines[0]}-{lines[^1]}") : string.Join(", ", lines));
    }
}
