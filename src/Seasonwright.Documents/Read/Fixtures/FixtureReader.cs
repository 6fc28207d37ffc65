using Seasonwright.Core;
using Seasonwright.Documents.Read.Calendars;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>
/// Reads a fixture list: CSV or text with any delimiter, with headings or as pasted from a page, a calendar, or the JSON form of open data. Never throws
/// on content; a file that cannot be read gives problems and no rows, and what it does not say is asked rather than guessed.
/// </summary>
public static class FixtureReader
{
    public static FixtureList Read(SourceText source, FixtureOptions options)
    {
        var list = Understand(source, options);
        if (ListKinds.Elsewhere(source, ListKind.Fixtures, ListKind.Calendar) is not { } elsewhere) return list;
        // What says who plays is a list of matches, whatever else it holds; only a plan has them too.
        var saysWhoPlays = list.Rows.Count(row => row.Venue is not null) >= FewestMatches && list.Questions.All(question => question.Kind != "Q-sides");
        return saysWhoPlays && elsewhere.Id != "year-here" ? list : Refused(source, CellTable.OfLines(source), new([elsewhere]));
    }

    private const int FewestMatches = 3;

    /// <summary>Reads a list whatever its kind.</summary>
    internal static FixtureList Understand(SourceText source, FixtureOptions options)
    {
        var (isJson, isCalendar) = (JsonTable.Is(source), CalendarFile.Is(source));
        var table = isJson ? JsonTable.Read(source) : isCalendar ? CellTable.OfLines(source) : CellTable.Read(source);
        if (table.Problems.Count > 0) return Refused(source, table, table.Problems);
        var answers = options.Answers ?? Answers.None;
        var asker = new Asker(answers);
        var layout = isCalendar ? CalendarFixtures.Layout(source, asker) : Layout(table, answers, asker);
        // The headings go along: saying what a column holds may mend it.
        if (layout.Problems.Count > 0) return Refused(source, table, layout.Problems.ToValueList(), layout.Headings);

        var sides = Sides.Of(layout.Matches);
        var team = TeamChoice.Of(source.Name, layout, sides, answers.Find("Q-team", "Q-team") ?? options.Team, options.Team, asker);
        if (team.Problem is { } missing) return Refused(source, table, new([missing]), layout.Headings) with { Teams = team.Teams, Answered = asker.Answered };
        if (layout.Ask is null && !layout.Matches.Any(match => match.ByeOf.Length == 0)) return Refused(source, table, new([Problem.Of("no-matches", source.Name, null, null)]));

        var dates = ListDates.Read(layout, sides, team, options, asker);
        var skipped = layout.Skipped;
        var drafts = OurMatches.Of(layout.Matches, sides, dates, team, skipped);
        FixtureQuestions.Ask(drafts, dates, [.. new[] { layout.Ask, team.Ask }.OfType<string>()], options.Today, asker, skipped);
        skipped.AddRange(drafts.Where(draft => draft.Listed.Beside.Any(HealthWords.In)).Select(draft => Skipped.Of(draft.Line, "", "event-health-words")));
        var season = layout.Years ?? dates.Column.Season;
        return new(source.Name,
            new(source.Encoding, isJson ? null : table.Delimiter, isJson ? null : layout.HeadingLine, layout.Headings, dates.Column.Order, dates.Column.OrderLines, season),
            team.Team, team.Teams, FixtureRows.Of(drafts), asker.Open, asker.Answered, skipped.OrderBy(line => line.Line).ToValueList(), ValueList<Problem>.Empty);
    }

    private static ListLayout Layout(CellTable table, Answers answers, Asker asker)
    {
        if ((HeadedList.Headings(table) ?? GuessedColumns.Headings(table)) is { } headings) return HeadedList.Read(table, headings, answers, asker);
        var loose = LooseList.Read(table);
        return loose.Matches.Count == 0 && GuessedColumns.Numbered(table) is { } numbers ? HeadedList.Read(table, numbers, answers, asker) : loose;
    }

    private static FixtureList Refused(SourceText source, CellTable table, ValueList<Problem> problems, ValueList<HeadingUse>? headings = null) => new(source.Name,
        new(source.Encoding, table.Delimiter, null, headings ?? ValueList<HeadingUse>.Empty, null, ValueList<int>.Empty, null), null, ValueList<TeamFound>.Empty,
        ValueList<FixtureRow>.Empty, ValueList<Question>.Empty, ValueList<Answered>.Empty, ValueList<Skipped>.Empty, problems);
}
