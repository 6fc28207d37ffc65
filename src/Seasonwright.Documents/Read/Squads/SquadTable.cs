using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>People from a table with headings. What tells of health is held back cell by cell.</summary>
/// <param name="sheet">The sheet it stands on, for its places and comments; null for text.</param>
internal sealed class SquadTable(CellTable table, SquadColumns columns, Sheet? sheet, SquadTold told)
{
    private static readonly SquadColumn[] Said = [SquadColumn.Number, SquadColumn.Position, SquadColumn.Born, SquadColumn.Age, SquadColumn.Height, SquadColumn.Mass, SquadColumn.Group];

    private string section = "";
    private SquadSection kind = SquadSection.People;

    /// <summary>Headings of columns that are not read.</summary>
    public IEnumerable<string> Unread => columns.Headings.Where((heading, column) => heading.Length > 0 && columns.Roles[column] is null);

    public List<SquadLine> Lines()
    {
        var lines = new List<SquadLine>();
        for (var i = 0; i < table.Rows.Count; i++)
        {
            var row = table.Rows[i];
            if (row.IsBlank) told.Skip(row.Line, row.Raw, "blank-line");
            else if (i < columns.First) told.Skip(row.Line, row.Raw, "squad-title");
            else if (i <= columns.Last || IsHeadings(row)) told.Skip(row.Line, row.Raw, "squad-headings");
            else if (Person(row) is { } line) lines.Add(line);
        }
        return lines;
    }

    private bool IsHeadings(CellRow row) => Enumerable.Range(columns.First, columns.Last - columns.First + 1).Any(i => row.Cells.SequenceEqual(table.Rows[i].Cells, StringComparer.Ordinal));

    private SquadLine? Person(CellRow row)
    {
        var filled = row.Filled.ToList();
        var (whole, family, given) = (columns.Cell(row, SquadColumn.Name), columns.Cell(row, SquadColumn.Family), columns.Cell(row, SquadColumn.Given));
        var name = Spelling.Tidy($"{whole} {family} {given}");
        if (filled is [var (_, alone)] && alone.Any(char.IsLetter) && IsSection(alone, name)) return Open(row, alone);
        if (filled.Take(2).Any(c => PositionWords.IsTotal(c.Cell)) && !filled.Any(c => c.Cell == given && PersonName.IsLike(given) && family.Length > 0 && !PositionWords.IsTotal(family))) return Skipped(row, "squad-totals");
        if (name.Length == 0) return Skipped(row, filled.TrueForAll(c => c.Cell.Any(char.IsAsciiDigit)) ? "squad-averages" : "squad-no-name");
        if (PositionWords.IsNobody(name) || Formula.Is(name) || !name.Any(char.IsLetter)) return Skipped(row, "squad-no-name");
        if (kind == SquadSection.Staff || PositionWords.IsStaff(columns.Cell(row, SquadColumn.Position))) return Skipped(row, "squad-staff");
        return Read(row, filled);
    }

    // One cell alone is a heading of what follows unless it is somebody's name.
    private static bool IsSection(string cell, string name) => name.Length == 0 || cell.EndsWith(':') || PositionWords.IsPosition(cell) || PositionWords.IsStaff(cell) || PositionWords.IsTrial(cell) || Availability.IsAbsence(cell) || !PersonName.IsLike(cell) || !cell.Contains(' ', StringComparison.Ordinal) && !cell.Contains(',', StringComparison.Ordinal);

    private SquadLine? Open(CellRow row, string cell)
    {
        kind = SquadSections.Of(cell);
        if (kind == SquadSection.People && PositionWords.IsTotal(cell)) return Skipped(row, "squad-totals");
        section = kind == SquadSection.People && !HealthWords.BesidePerson(cell) ? cell.TrimEnd(':', ' ') : "";
        if (HealthWords.BesidePerson(cell) && kind == SquadSection.People) told.Hold(row.Line, Where(row.Line, row.Filled.First().Column));
        return Skipped(row, "squad-section");
    }

    private SquadLine? Skipped(CellRow row, string why)
    {
        told.Skip(row.Line, row.Raw, why);
        return null;
    }

    private SquadLine? Read(CellRow row, List<(int Column, string Cell)> filled)
    {
        var names = new[] { SquadColumn.Name, SquadColumn.Family, SquadColumn.Given }.ToDictionary(role => role, role => columns[role] is { } column ? NameCell.Of(row[column]) : NameCell.None);
        var beside = names.Values.SelectMany(cell => cell.Beside).ToList();
        var values = Said.ToDictionary(role => role, role => columns[role] is { } column ? Plain(row, column) : "");
        foreach (var (role, cell) in names.Where(cell => cell.Value.TellsHealth)) told.Hold(row.Line, Where(row.Line, columns[role]!.Value));
        if (names.Values.All(cell => cell.Name.Length == 0)) return Skipped(row, "squad-no-name");
        foreach (var column in columns.All(SquadColumn.Health).Where(column => row[column].Length > 0 && !SquadColumns.IsNothing(row[column]))) told.Hold(row.Line, Where(row.Line, column));
        var remarks = columns.All(SquadColumn.Remark).Select(column => Plain(row, column)).Where(cell => cell.Length > 0 && !SquadColumns.IsNothing(cell) && !Availability.IsSaid(cell)).ToList();
        var position = values[SquadColumn.Position];
        if (position.Length == 0 && beside.Find(PositionWords.IsPosition) is { } inName) (position, _) = (inName, beside.Remove(inName));
        var all = string.Join(' ', filled.Where(c => columns.Roles.ElementAtOrDefault(c.Column) is not (SquadColumn.Health or null)).Select(c => c.Cell));
        return new SquadLine(row.Line, row.Raw)
        {
            Name = names[SquadColumn.Name].Name,
            Family = names[SquadColumn.Family].Name,
            Given = names[SquadColumn.Given].Name,
            Number = values[SquadColumn.Number],
            Position = SquadColumns.IsNothing(position) ? "" : position,
            Born = values[SquadColumn.Born],
            Age = values[SquadColumn.Age],
            Mass = values[SquadColumn.Mass],
            Height = values[SquadColumn.Height],
            Lifts = [.. columns.All(SquadColumn.Lift).Select(column => Lift(row, column)).OfType<LiftCell>()],
            Group = SquadColumns.IsNothing(values[SquadColumn.Group]) ? section : values[SquadColumn.Group],
            Remarks = [.. remarks, .. beside, .. Comments(row.Line)],
            IsTrial = kind == SquadSection.Trial || PositionWords.IsTrial(all),
            IsAbsent = kind == SquadSection.Absent,
        };
    }

    // A cell, or nothing where it holds an error or tells of health.
    private string Plain(CellRow row, int column)
    {
        var cell = row[column];
        if (Formula.Is(cell)) told.Skip(row.Line, cell, "squad-error");
        else if (HealthWords.BesidePerson(cell) && !Availability.IsSaid(cell) && !(columns.Roles[column] == SquadColumn.Position && PositionWords.IsPosition(cell))) told.Hold(row.Line, Where(row.Line, column));
        else return cell;
        return "";
    }

    private LiftCell? Lift(CellRow row, int column)
    {
        var (heading, cell) = (columns.Headings[column], Plain(row, column));
        if (SquadColumns.IsNothing(cell)) return null;
        if (LiftText.Read(cell) is not { } text)
        {
            told.Unread(row.Line, cell, heading);
            return null;
        }
        var called = SquadHeadings.Plain(heading) is { Length: > 0 } plain ? heading.Split(['(', '['])[0] is { Length: > 0 } bare && SquadHeadings.Plain(bare) == plain ? Spelling.Tidy(bare) : plain : heading;
        return new(Exercises.Of(SquadHeadings.Plain(heading)) ?? called, called, MassText.UnitsIn(heading) is [var unit] ? unit : null, SquadHeadings.RepsIn(heading), text);
    }

    private List<string> Comments(int line)
    {
        var plain = new List<string>();
        foreach (var cell in sheet?.Cells.Where(cell => cell.Row == line && cell.Comment.Length > 0) ?? [])
        {
            var comment = Spelling.Tidy(cell.Comment);
            if (HealthWords.BesidePerson(comment)) told.Hold(line, Sentences.Say("squad.comment", cell.At));
            else plain.Add(comment);
        }
        return plain;
    }

    private string Where(int line, int column) => sheet is null ? Sentences.Say("squad.cell", line, column + 1) : new CellAt(line, column + 1).ToString();
}
