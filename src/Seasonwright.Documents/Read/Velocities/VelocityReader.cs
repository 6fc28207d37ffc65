using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;

namespace Seasonwright.Documents.Read.Velocities;

/// <summary>
/// Reads a list of loads and velocities: a heading that names both columns, then a row a repetition. Lines that begin with # are
/// remarks, further columns are left alone. Never throws on content; a list with one wrong cell is not taken.
/// </summary>
public static partial class VelocityReader
{
    private static readonly string[] LoadWords = ["load", "loads", "weight", "mass", "last", "gewicht", "masse", "charge", "carga", "carico", "peso", "vekt", "vikt", "gewichten", "kg", "lb", "lbs"];

    private static readonly string[] VelocityWords =
        ["velocity", "velocities", "vel", "speed", "v", "mv", "mpv", "mcv", "geschwindigkeit", "vitesse", "velocidad", "velocità", "velocita", "hastighet", "hastighed", "snelheid"];

    /// <summary>Headings of columns that hold whose and what the repetitions are: one line is never drawn through two people or two lifts.</summary>
    private static readonly string[] OwnerWords =
        ["athlete", "player", "name", "who", "spieler", "spielerin", "sportler", "sportlerin", "wer", "joueur", "joueuse", "jugador", "jugadora", "lift", "exercise", "movement", "ubung", "übung", "exercice", "ejercicio"];

    private static readonly string[] PoundWords = ["lb", "lbs", "pound", "pounds"];

    public static VelocityList Read(SourceText source)
    {
        if (source.Problems.Count > 0) return Refused(source.Problems[0]);
        // Blank instead of gone, so that lines keep their numbers.
        var table = CellTable.Read(SourceText.OfText(source.Name, string.Join('\n', source.Lines.Select(line => line.TrimStart().StartsWith('#') ? "" : line))));
        if (table.Problems.Count > 0) return Refused(table.Problems[0]);
        var rows = table.Rows.Where(row => !row.IsBlank && !row[0].StartsWith("sep=", StringComparison.OrdinalIgnoreCase)).ToList();
        if (rows.Count == 0) return Refused(Problem.Of("empty", source.Name, null, null));
        var heading = rows[0];
        if (Column(heading, IsLoad) is not { } load || Column(heading, IsVelocity) is not { } velocity || load == velocity)
            return Refused(Problem.Of("velocity-columns", source.Name, heading.Line, null, Spelling.Cut(string.Join(", ", heading.Filled.Select(cell => cell.Cell)), 80)));
        if (rows.Count == 1) return Refused(Problem.Of("velocity-none", source.Name, heading.Line, null));
        foreach (var (column, owner) in heading.Filled.Where(cell => cell.Column != load && cell.Column != velocity && Words(cell.Cell).Intersect(OwnerWords, StringComparer.Ordinal).Any()))
            if (rows.Skip(2).FirstOrDefault(row => !Spelling.Same(row[column], rows[1][column])) is { } other)
                return Refused(Problem.Of("velocity-several", source.Name, other.Line, column + 1, owner, Spelling.Cut(rows[1][column], 40), Spelling.Cut(other[column], 40)));
        var isPounds = Words(heading[load]).Any(word => PoundWords.Contains(word, StringComparer.Ordinal));
        string[] loadUnits = isPounds ? PoundWords : ["kg"], velocityUnits = ["m/s"];
        var points = new List<VelocityPoint>();
        foreach (var row in rows.Skip(1))
        {
            if (row.Filled.Last().Column >= heading.Cells.Count) return Refused(Problem.Of("velocity-cells", source.Name, row.Line, heading.Cells.Count + 1, row.Cells.Count, heading.Cells.Count));
            if (Trouble(row, load, loadUnits, VelocityPoint.MostLoad) is { } noLoad) return Refused(noLoad);
            if (Trouble(row, velocity, velocityUnits, VelocityPoint.MostVelocity) is { } noVelocity) return Refused(noVelocity);
            points.Add(new(Number(row[load], loadUnits)!.Value, Number(row[velocity], velocityUnits)!.Value));
        }
        return new(isPounds ? MassUnit.Pound : MassUnit.Kilogram, points.ToValueList(), ValueList<Problem>.Empty);

        Problem? Trouble(CellRow row, int column, string[] units, double most)
        {
            var id = row[column].Length == 0 ? "velocity-missing" : Number(row[column], units) is not { } number ? "velocity-number" : number <= 0 || number > most ? "velocity-beyond" : null;
            return id is null ? null : Problem.Of(id, source.Name, row.Line, column + 1, heading[column], Spelling.Cut(row[column], 40), most);
        }
    }

    /// <summary>The one column whose heading is meant; null for none and for several.</summary>
    private static int? Column(CellRow heading, Func<string, bool> isMeant) => heading.Filled.Where(cell => isMeant(cell.Cell)).Select(cell => (int?)cell.Column).ToList() is [var one] ? one : null;

    private static bool IsLoad(string heading) => Words(heading) is var words && words.Intersect(LoadWords, StringComparer.Ordinal).Any() && !words.Contains("body", StringComparer.Ordinal);

    private static bool IsVelocity(string heading) => Words(heading) is var words && (words.Intersect(VelocityWords, StringComparer.Ordinal).Any() || words is ["m", "s"]);

    private static string[] Words(string heading) => Spelling.Fold(heading).Split([' ', '_', '-', '(', ')', '[', ']', '/', '.', ',', ':'], StringSplitOptions.RemoveEmptyEntries);

    /// <summary>"102.5", "102,5", "102,5 kg", "1.10 m/s"; a comma is a decimal sign. Null for anything else, another unit than the column's too.</summary>
    private static double? Number(string cell, string[] units) =>
        Form().Match(cell) is { Success: true } match && (!match.Groups["unit"].Success || units.Contains(match.Groups["unit"].Value, StringComparer.OrdinalIgnoreCase))
            ? double.Parse(match.Groups["n"].Value.Replace(',', '.'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) : null;

    private static VelocityList Refused(Problem problem) => new(MassUnit.Kilogram, ValueList<VelocityPoint>.Empty, [problem]);

    [GeneratedRegex(@"^(?<n>-?[0-9]{0,6}(?:[.,]?[0-9]{1,15}))(?: ?(?<unit>[a-z/]+))?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Form();
}
