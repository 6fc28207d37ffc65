using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>Which column holds what, by the headings: one row, or two of which the upper names groups of columns ("Maxes (kg)" over "Squat" and "Bench").</summary>
/// <param name="First">Index of the first row of headings.</param>
/// <param name="Last">Index of the last one.</param>
/// <param name="Headings">By column; of two rows both, the upper first.</param>
/// <param name="Roles">By column; null where a heading is not known.</param>
internal sealed record SquadColumns(int First, int Last, ValueList<string> Headings, IReadOnlyList<SquadColumn?> Roles)
{
    private const int SearchedRows = 25, LongestHeading = 60;

    public int? this[SquadColumn role] => Roles.ToList().IndexOf(role) is >= 0 and var at ? at : null;

    public string Cell(CellRow row, SquadColumn role) => this[role] is { } column ? row[column] : "";

    public IEnumerable<int> All(SquadColumn role) => Enumerable.Range(0, Roles.Count).Where(column => Roles[column] == role);

    /// <summary>The headings of a table of people: a name, and at least one thing that is said of people only. Null where there are none.</summary>
    public static SquadColumns? Of(CellTable table)
    {
        for (var i = 0; i < Math.Min(table.Rows.Count, SearchedRows); i++)
        {
            var one = Of(table, i, i, table.Rows[i].Cells);
            var two = i + 1 < table.Rows.Count && Joined(table.Rows[i], table.Rows[i + 1]) is { } joined ? Of(table, i, i + 1, joined) : null;
            if (two is not null && (one is null || Known(two) > Known(one))) return two;
            if (one is not null) return one;
        }
        return null;
    }

    private static int Known(SquadColumns columns) => columns.Roles.Count(role => role is not null);

    private static SquadColumns? Of(CellTable table, int first, int last, IEnumerable<string> cells)
    {
        var headings = cells.ToValueList();
        var filled = headings.Where(heading => heading.Length > 0).ToList();
        if (filled.Count < 2 || filled.Any(heading => heading.Length > LongestHeading || heading.All(char.IsAsciiDigit) || Formula.Is(heading))) return null;
        var roles = headings.Select(SquadHeadings.Of).ToList();
        Settle(roles);
        ByCells(roles, headings, [.. table.Rows.Skip(last + 1)]);
        var hasName = roles.Exists(role => role is SquadColumn.Name or SquadColumn.Family);
        var tells = roles.Exists(role => role is SquadColumn.Given or SquadColumn.Number or SquadColumn.Position or SquadColumn.Born or SquadColumn.Age or SquadColumn.Height or SquadColumn.Mass or SquadColumn.Lift);
        // A list of matches or events has names too.
        var others = filled.Count(heading => SquadHeadings.Of(heading) is null && IsOfEvents(heading));
        return hasName && tells && others == 0 ? new(first, last, headings, roles) : null;
    }

    private static bool IsOfEvents(string heading) => Fixtures.HeadingWords.RoleOf(heading) is Fixtures.ColumnRole.Opponent or Fixtures.ColumnRole.Home or Fixtures.ColumnRole.Away or Fixtures.ColumnRole.KickOff or Fixtures.ColumnRole.Venue or Fixtures.ColumnRole.Date or Fixtures.ColumnRole.Result;

    // "Name" beside "Vorname" is the family name, "Nombre" beside "Apellidos" the given one. Of several columns for one thing the first is read.
    private static void Settle(List<SquadColumn?> roles)
    {
        var (name, family, given) = (roles.IndexOf(SquadColumn.Name), roles.IndexOf(SquadColumn.Family), roles.IndexOf(SquadColumn.Given));
        if (name >= 0 && given >= 0 && family < 0) roles[name] = SquadColumn.Family;
        else if (name >= 0 && family >= 0 && given < 0) roles[name] = SquadColumn.Given;
        else if (name < 0 && family < 0 && given >= 0) roles[given] = SquadColumn.Name;
        foreach (var role in Enum.GetValues<SquadColumn>().Except([SquadColumn.Lift, SquadColumn.Remark, SquadColumn.Health]))
            for (var i = roles.IndexOf(role) + 1; i > 0 && i < roles.Count; i++)
                if (roles[i] == role) roles[i] = null;
        // Family, given and the whole name again: the two are read.
        if (roles.Contains(SquadColumn.Family) && roles.Contains(SquadColumn.Given) && roles.IndexOf(SquadColumn.Name) is >= 0 and var again) roles[again] = null;
    }

    // A heading not known over cells such as "85x5" is a lift's.
    private static void ByCells(List<SquadColumn?> roles, ValueList<string> headings, List<CellRow> below)
    {
        for (var column = 0; column < roles.Count; column++)
        {
            if (roles[column] is not null || headings[column].Length == 0) continue;
            var cells = below.Select(row => row[column]).Where(cell => cell.Length > 0 && !IsNothing(cell)).ToList();
            if (cells.Count > 0 && cells.Count(cell => LiftText.Read(cell) is not null) * 2 > cells.Count && (SquadHeadings.RepsIn(headings[column]) is not null || cells.Count(cell => LiftText.Read(cell)?.Reps is not null) * 2 > cells.Count))
                roles[column] = SquadColumn.Lift;
        }
    }

    // The upper row holds for the columns to the right of it until it names another; null unless both are words, and the lower one known words.
    private static List<string>? Joined(CellRow upper, CellRow lower)
    {
        // A title above the headings stands in the first column, alone.
        if (!lower.Filled.Any() || !upper.Filled.Any(c => c.Column > 0)) return null;
        if (lower.Filled.Any(c => SquadHeadings.Of(c.Cell) is null && MassText.UnitsIn(c.Cell).Count == 0 && SquadHeadings.RepsIn(c.Cell) is null && HeightUnit(c.Cell) is false)) return null;
        var (joined, group) = (new List<string>(), "");
        for (var column = 0; column < Math.Max(upper.Cells.Count, lower.Cells.Count); column++)
        {
            if (upper[column].Length > 0) group = upper[column];
            joined.Add((upper[column].Length, lower[column].Length) switch
            {
                (0, 0) => "",
                ( > 0, 0) => upper[column],
                _ when SquadHeadings.Of(lower[column]) is SquadColumn.Lift || SquadHeadings.Of(lower[column]) is null && group.Length > 0 => Spelling.Tidy($"{group} {lower[column]}"),
                _ => lower[column],
            });
        }
        // "1RM (kg) Squat": what the group says of units and repetitions goes behind the exercise.
        return [.. joined.Select((heading, column) => SquadHeadings.Of(lower[column]) is SquadColumn.Lift ? Spelling.Tidy($"{lower[column]} ({heading[..^lower[column].Length].Trim().Replace('(', ' ').Replace(')', ' ')})") : heading)];
    }

    private static bool HeightUnit(string cell) => cell is "cm" or "(cm)" or "m";

    /// <summary>What people write where there is no value: it is never 0.</summary>
    public static bool IsNothing(string cell) => cell.Trim('.', ' ') is "" or "-" or "–" or "—" or "--" or "x" or "X" or "?" or "??" or "/" or "n/a" or "N/A" or "na" or "NA" or "tbc" or "TBC" or "tba" or "TBA" or "k.A" or "k. A" or "offen" or "none" or "nil";
}
