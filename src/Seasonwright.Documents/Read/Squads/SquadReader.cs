using Seasonwright.Core;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>
/// Reads squad lists: names with numbers, positions, days of birth, body masses and lifts, as tables with headings or as lines of prose. Never
/// throws on content; what a list does not say is asked rather than guessed, and whatever tells of health is held back.
/// </summary>
public static class SquadReader
{
    private const int FewestPeople = 3;

    /// <summary>A workbook is read whole: the sheet that is a squad list, with its comments and places. Anything else is text.</summary>
    public static SquadList Read(string name, byte[] bytes, SquadOptions options)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        if (!Workbook.Is(bytes)) return Read(SourceText.OfBytes(name, bytes), options);
        var workbook = Workbook.Read(name, bytes);
        var asker = new Asker(options.Answers ?? Answers.None);
        var lists = workbook.Sheets.Where(sheet => !sheet.IsHidden).Select(sheet => (Sheet: sheet, Text: SourceText.OfSheet(workbook, sheet)))
            .Where(page => page.Text.Problems.Count == 0 && SquadColumns.Of(CellTable.OfTabs(page.Text)) is not null).OrderByDescending(page => page.Sheet.LastRow).ToList();
        if (lists.Count == 0) return Read(SourceText.OfWorkbook(workbook), options);
        var asked = lists.Count < 2 ? (Asked?)null : asker.Ask("sheet", "", [1], lists.Select(list => new AnswerOption(list.Sheet.Name, list.Sheet.Name)), [lists[0].Sheet.Name], lists[0].Sheet.Name);
        var chosen = lists.Find(list => list.Sheet.Name == asked?.Answer) is { Text: not null } answered ? answered : lists[0];
        return Read(chosen.Text, chosen.Sheet, options, asker);
    }

    public static SquadList Read(SourceText source, SquadOptions options) => Read(source, null, options, new Asker(options.Answers ?? Answers.None));

    /// <summary>Whether a file is a squad list, so that a page for other lists can say so: a table headed as people are, or lines of which enough are told as players.</summary>
    public static bool Is(SourceText source)
    {
        if (source.Problems.Count > 0 || EventReader.IsProgramText(source)) return false;
        var table = CellTable.Read(source);
        if (table.Problems.Count > 0) return false;
        if (table.Delimiter is not null && SquadColumns.Of(table) is { } columns) return new SquadTable(table, columns, null, new SquadTold()).Lines().Count > 0;
        var (lines, filled) = (Prose(source, table, new SquadTold()), source.Lines.Count(line => !string.IsNullOrWhiteSpace(line)));
        return lines.Count >= FewestPeople && lines.Count * 2 >= filled && SquadProse.Told(lines) * 2 >= lines.Count;
    }

    private static SquadList Read(SourceText source, Sheet? sheet, SquadOptions options, Asker asker)
    {
        var table = sheet is null ? CellTable.Read(source) : CellTable.OfTabs(source);
        if (source.Problems.Count > 0 || table.Problems.Count > 0 && CellTable.IsIn(source)) return Refused(source, source.Problems.Count > 0 ? source.Problems : table.Problems);
        if (EventReader.IsProgramText(source)) return Refused(source, new([ListKinds.Elsewhere(source, ListKind.Squad) ?? Problem.Of("program-text", source.Name, 1, null)]));
        var told = new SquadTold();
        var columns = table.Problems.Count == 0 && table.Delimiter is not null ? SquadColumns.Of(table) : null;
        var headed = columns is null ? null : new SquadTable(table, columns, sheet, told);
        var lines = headed is null ? Prose(source, table, told) : headed.Lines();
        if (headed is null && SquadProse.Told(lines) * 2 <= lines.Count && ListKinds.Elsewhere(source, ListKind.Squad) is { } elsewhere) return Refused(source, new([elsewhere]));
        if (sheet is not null) Coloured(lines, sheet, told);
        var titles = told.Skipped.Where(skipped => skipped.Kind == "squad-title").Select(skipped => skipped.Text).ToList();
        var named = SquadNames.Read(lines, columns?[SquadColumn.Name] is { } at ? SquadHeadings.SaysFamilyFirst(columns.Headings[at]) : null, asker);
        var born = BirthDates.Read([.. named.Select(person => (person.Line, person.Name))], options, asker);
        var questions = new SquadQuestions(options, asker, told, SquadUnits.Of(titles));
        var rows = questions.Rows(named, born, columns?[SquadColumn.Mass] is { } mass && MassText.UnitsIn(columns.Headings[mass]) is [var unit] ? unit : null);
        if (rows.Count == 0 && told.Held.Count == 0 && told.Skipped.TrueForAll(skipped => skipped.Kind != "squad-left-out")) return Refused(source, new([Problem.Of("no-squad", source.Name, null, null)]));
        return new(source.Name, TeamOf(titles), rows.ToValueList(), asker.Open, asker.Answered, told.Skipped.OrderBy(skipped => skipped.Line).ToValueList(), told.Held.OrderBy(held => held.Line).ToValueList(), ValueList<Problem>.Empty,
            new(source.Encoding, columns is null && table.Delimiter is ',' or ' ' ? null : table.Delimiter, columns is null ? null : table.Rows[columns.Last].Line, questions.MassUnit, questions.LiftUnit, born.Order,
                headed?.Unread.Where(heading => !HealthWords.BesidePerson(heading)).ToValueList() ?? ValueList<string>.Empty));
    }

    // Rows of a table without headings are read as lines whose pieces are its cells.
    private static List<SquadLine> Prose(SourceText source, CellTable table, SquadTold told)
    {
        var areCells = table.Problems.Count == 0 && table.Delimiter is '\t' or ';' or '|';
        return new SquadProse(told, areCells).Lines(areCells ? table.Rows : CellTable.OfLines(source).Rows);
    }

    // A row or two in another colour than the rest: it means something, perhaps that somebody is out. Which is not read, and is told.
    private static void Coloured(List<SquadLine> lines, Sheet sheet, SquadTold told)
    {
        var fills = lines.Select(line => (line.Line, Fill: sheet.Cells.FirstOrDefault(cell => cell.Row == line.Line && !cell.IsEmpty)?.Fill)).ToList();
        if (fills.GroupBy(row => row.Fill).OrderByDescending(same => same.Count()).FirstOrDefault() is not { } usual || usual.Count() * 3 < fills.Count * 2) return;
        foreach (var (line, _) in fills.Where(row => row.Fill is not null && row.Fill != usual.Key)) told.Hold(line, Sentences.Say("squad.colour", line));
    }

    // "Harbour Vale – Kader 2026/27": what is left without the words for a list and the years.
    private static string? TeamOf(IEnumerable<string> titles)
    {
        foreach (var title in titles)
        {
            var parts = title.Trim(';', ',', '\t', '|', ' ').Split([" – ", " - ", " — ", ": ", ";", "\t"], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            foreach (var part in parts)
            {
                var words = part.Split(' ').Where(word => !PositionWords.NamesSquad(word) && !word.Trim('/', '-', '(', ')').All(c => char.IsAsciiDigit(c) || c is '/' or '-')).ToList();
                if (words.Count > 0 && char.IsUpper(words[0][0])) return string.Join(' ', words);
            }
        }
        return null;
    }

    private static SquadList Refused(SourceText source, ValueList<Problem> problems) => new(source.Name, null, ValueList<SquadRow>.Empty, ValueList<Question>.Empty, ValueList<Answered>.Empty, ValueList<Skipped>.Empty,
        ValueList<HeldBack>.Empty, problems, new(source.Encoding, null, null, null, null, null, ValueList<string>.Empty));
}
