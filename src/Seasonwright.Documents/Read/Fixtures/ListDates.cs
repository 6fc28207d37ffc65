using Seasonwright.Core;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>The dates of all listed matches, ours and others', decided together.</summary>
/// <param name="Of">By the match's place in the list; null where its row has no readable date.</param>
/// <param name="Blanks">Rows whose date may be the one above.</param>
internal sealed record ListDates(DateColumn Column, IReadOnlyList<DateReading?> Of, BlankDates Blanks)
{
    public static ListDates Read(ListLayout layout, List<Sides> sides, TeamChoice team, FixtureOptions options, Asker asker)
    {
        var written = layout.Matches.Select(Written).ToList();
        var blanks = BlankDates.Fill(written, layout, sides, team, asker);
        var lines = layout.Matches.Zip(written).Where(pair => pair.Second is not null).Select(pair => new LineDate(pair.First.Line, pair.Second!)).ToList();
        var column = DateColumn.Read(lines, new DateHints(options.UsualOrder, layout.Years, options.Season, options.Today), asker);
        var next = 0;
        return new(column, [.. written.Select(date => date is null ? null : column.Readings[next++])], blanks);
    }

    /// <summary>The date of a match's cell, completed by a month heading above, else that of the heading itself.</summary>
    public static WrittenDate? Written(ListedMatch match)
    {
        var found = match.Date.Length == 0 ? null : DateText.Find(match.Date, months: true);
        // "Sat 5" below "September 2026"
        if (found is null && match.Date.Length is > 0 and <= 12 && match.SectionDate is { Kind: WrittenKind.Month }) found = DateText.Find($"{match.Date.TrimEnd('.')}. {match.Section}");
        if (found is null && match.Date.Length == 0 && match.SectionDate is { Kind: not WrittenKind.Month } section) found = section;
        if (found is { Kind: WrittenKind.Day } && found.First.Weekday is null && CalendarWords.Weekday(match.Weekday) is { } weekday) return found with { First = found.First with { Weekday = weekday } };
        return found;
    }
}
