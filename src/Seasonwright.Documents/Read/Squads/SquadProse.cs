using System.Text.RegularExpressions;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>People from lines of prose: a number or none, the name, and the rest in any order, set apart by commas, dashes and brackets.</summary>
/// <param name="areCells">The lines are the rows of a table without headings.</param>
internal sealed partial class SquadProse(SquadTold told, bool areCells)
{
    private const int FewestBareNames = 3;

    /// <summary>Words of a piece that are tried as several statements; a longer one is a sentence.</summary>
    private const int MostWords = 12;

    private string group = "";
    private SquadSection kind = SquadSection.People;

    /// <summary>How many of the people are told as a player is: with a position, a body mass, a lift or an age.</summary>
    public static int Told(IEnumerable<SquadLine> lines) => lines.Count(line => line.Position.Length + line.Mass.Length + line.Age.Length + line.Lifts.Count > 0);

    public List<SquadLine> Lines(IReadOnlyList<CellRow> rows)
    {
        var lines = new List<SquadLine>();
        var namesAlone = rows.Count(row => IsNameAlone(Text(row))) >= FewestBareNames;
        foreach (var row in rows)
        {
            var (text, before) = (Text(row), lines.Count);
            if (text.Length == 0) Skip(row, "blank-line");
            else if (Label().Match(text) is { Success: true } label && Opens(label.Groups["label"].Value)) lines.AddRange(Listed(row, label));
            else if (PositionWords.IsTotal(text)) Skip(row, "squad-totals");
            else if (Heading(text) && !Numbered().IsMatch(text)) Open(row, text.TrimEnd(':', ' '), lines.Count > 0);
            else if (lines.Count == 0 && PositionWords.NamesSquad(text) && !Numbered().IsMatch(text)) Skip(row, "squad-title");
            else if (Numbered().Match(text) is { Success: true } start && PositionWords.IsNobody(text[start.Length..])) Skip(row, "squad-no-name");
            else if (Person(row, text, namesAlone) is { } line) lines.Add(line);
            if (lines.Count == before || kind != SquadSection.Staff) continue;
            lines.RemoveRange(before, lines.Count - before);
            Skip(row, "squad-staff");
        }
        return lines;
    }

    private static string Text(CellRow row) => Bullet().Replace(Spelling.Tidy(string.Join(", ", row.Filled.Select(c => c.Cell))), "");

    private static bool IsNameAlone(string text) => text.Contains(' ', StringComparison.Ordinal) && PersonName.IsLike(text) && !PositionWords.NamesSquad(text) && !PositionWords.IsPosition(text);

    private void Skip(CellRow row, string why) => told.Skip(row.Line, row.Raw, why);

    // "FORWARDS", "Goalkeepers:", "Injured", "Staff".
    private static bool Heading(string text) => text.Length <= 40 && !text.Any(char.IsAsciiDigit) && !text.Contains(',', StringComparison.Ordinal)
        && (text.EndsWith(':') || PositionWords.IsPosition(text) || Availability.IsAbsence(text) || text.Count(c => c == ' ') < 3 && (PositionWords.IsStaff(text) || PositionWords.IsTrial(text)) || !text.Any(char.IsLower) && text.Count(c => c == ' ') < 2 && text.Count(char.IsLetter) > 2);

    private void Open(CellRow row, string heading, bool begun)
    {
        kind = SquadSections.Of(heading);
        group = kind == SquadSection.People && !HealthWords.BesidePerson(heading) ? heading : "";
        Skip(row, kind == SquadSection.People && !begun && PositionWords.NamesSquad(heading) ? "squad-title" : kind == SquadSection.People && PositionWords.IsPosition(heading) ? "squad-group" : "squad-section");
        if (kind == SquadSection.People && PositionWords.NamesSquad(heading)) group = "";
    }

    private static bool Opens(string label) => SquadSections.Of(label) != SquadSection.People || PositionWords.IsPosition(label) || PositionWords.IsCaptain(label);

    // "Goalkeepers: 1 Anna Berg, 12 Mia Lund", "Injured: J. Morwennick (collar bone)", "Coach: ...".
    private List<SquadLine> Listed(CellRow row, Match label)
    {
        var (heading, people) = (label.Groups["label"].Value, new List<SquadLine>());
        var named = SquadSections.Of(heading);
        if (named == SquadSection.Staff || PositionWords.IsCaptain(heading) && !PositionWords.IsPosition(heading))
        {
            Skip(row, "squad-staff");
            return people;
        }
        foreach (var piece in Pieces(label.Groups["rest"].Value))
        {
            // Who is out is out for a reason, which is not ours.
            if (piece.InBrackets && named == SquadSection.Absent) continue;
            if (piece.InBrackets || !PersonName.IsLike(Numbered().Replace(piece.Text, "")))
            {
                if (HealthWords.BesidePerson(piece.Text)) told.Hold(row.Line, Place(row.Line));
                else if (people.Count > 0 && people[^1].Number.Length == 0 && piece.Text.Length <= 3 && piece.Text.All(char.IsAsciiDigit)) people[^1] = people[^1] with { Number = piece.Text };
                else if (people.Count > 0 && PositionWords.IsPosition(piece.Text)) people[^1] = people[^1] with { Position = piece.Text };
                else if (people.Count > 0 && !PositionWords.IsCaptain(piece.Text)) people[^1] = people[^1] with { Remarks = [.. people[^1].Remarks, piece.Text] };
                continue;
            }
            var number = Numbered().Match(piece.Text);
            people.Add(new SquadLine(row.Line, row.Raw) { Number = Number(number), Name = piece.Text[number.Length..], Group = named == SquadSection.People ? heading : "", IsTrial = named == SquadSection.Trial, IsAbsent = named == SquadSection.Absent });
        }
        if (named == SquadSection.Absent) told.Hold(row.Line, Place(row.Line));
        if (people.Count == 0) Skip(row, "squad-prose");
        return people;
    }

    private SquadLine? Person(CellRow row, string text, bool namesAlone)
    {
        var number = Numbered().Match(text);
        var pieces = Pieces(text[number.Length..]);
        var (name, rest) = Name(pieces);
        var line = name.Length == 0 ? null : new SquadLine(row.Line, row.Raw) { Name = name, Number = Number(number), Group = group, IsTrial = kind == SquadSection.Trial || PositionWords.IsTrial(text), IsAbsent = kind == SquadSection.Absent };
        var (held, known) = (false, 0);
        foreach (var piece in rest.SelectMany(Parted))
        {
            if (line is null) break;
            // "asthma (pump in the bag)": what stands in brackets behind it belongs to it.
            if (held && piece.InBrackets) continue;
            var reading = new PieceReading(line, piece);
            held |= reading.TellsHealth;
            if (reading.IsKnown) known++;
            line = reading.Line;
        }
        var isPerson = line is not null && (number.Success || known > 0 || kind is SquadSection.Absent or SquadSection.Trial || group.Length > 0 && rest.Count == 0 || namesAlone && IsNameAlone(text));
        if (!isPerson || kind == SquadSection.Staff)
        {
            if (HealthWords.BesidePerson(text)) told.Hold(row.Line, Place(row.Line));
            Skip(row, kind == SquadSection.Staff ? "squad-staff" : "squad-prose");
            return null;
        }
        if (held || kind == SquadSection.Absent) told.Hold(row.Line, Place(row.Line));
        return line;
    }

    private static string Place(int line) => Sentences.Say("squad.line", line);

    private static string Number(Match number) => number.Success ? number.Groups["n"].Value : "";

    // The name, and what is said behind it; words behind the name that no name has are said of it too.
    private (string Name, List<Piece> Behind) Name(List<Piece> pieces)
    {
        if (pieces.Count == 0 || pieces[0].InBrackets) return ("", []);
        var words = pieces[0].Text.Split(' ');
        var end = Array.FindIndex(words, word => word.Any(char.IsAsciiDigit));
        if (end < 0) end = words.Length;
        while (end > 2 && PositionWords.IsPosition(words[end - 1]) && IsNoName(words[end - 1])) end--;
        var said = Statements(words.AsSpan(end));
        for (var from = 2; said is null && from < end; from++)
            if (IsNoName(words[from]) && Statements(words.AsSpan(from)) is { } earlier) (said, end) = (earlier, from);
        var name = string.Join(' ', words[..end]);
        if (!PersonName.IsLike(name)) return PersonName.FirstWords(name) is { Length: > 0 } first && first.Contains(' ', StringComparison.Ordinal) ? (first, [new(pieces[0].Text[first.Length..].Trim(), false), .. pieces.Skip(1)]) : ("", []);
        List<Piece> rest = [.. (said ?? words[end..]).Select(word => new Piece(word, false)), .. pieces.Skip(1)];
        // "Thackerbury, Oswin": the given name stands behind a comma.
        if (words.Length == 1 && end == 1 && rest is [{ InBrackets: false, AfterComma: true } given, ..] && PersonName.IsLike(given.Text) && given.Text.Split(' ').Length <= 2 && !PositionWords.IsPosition(given.Text) && !PositionWords.IsCaptain(given.Text))
            return (areCells ? $"{name} {given.Text}" : $"{name}, {given.Text}", rest[1..]);
        return (name, rest);
    }

    private static bool IsNoName(string word) => word.Length <= 3 || char.IsLower(word[0]);

    // "72 kg squat 100 x 3" says two things with only a space between them.
    private static IEnumerable<Piece> Parted(Piece piece) => Statements(piece.Text.Split(' '))?.Select(said => piece with { Text = said }) ?? [piece];

    // The fewest statements that words make up, the longest first; null where one of them would say nothing that lists say.
    private static IReadOnlyList<string>? Statements(ReadOnlySpan<string> words)
    {
        if (words.IsEmpty) return [];
        if (words.Length > MostWords) return null;
        for (var taken = words.Length; taken > 0; taken--)
        {
            var said = string.Join(' ', words[..taken]!);
            if (!PieceReading.Says(said)) continue;
            if (Statements(words[taken..]) is { } behind) return [said, .. behind];
        }
        return null;
    }

    /// <summary>Cut at commas, semicolons, bars, spaced dashes and brackets, but not inside "78,4".</summary>
    private static List<Piece> Pieces(string text)
    {
        var pieces = new List<Piece>();
        var (start, inBrackets, afterComma) = (0, false, false);
        for (var i = 0; i <= text.Length; i++)
        {
            var c = i < text.Length ? text[i] : ';';
            var isDash = c is '-' or '–' or '—' && i > 0 && text[i - 1] == ' ' && i + 1 < text.Length && text[i + 1] == ' ';
            var isDecimal = c == ',' && i > 0 && i + 1 < text.Length && char.IsAsciiDigit(text[i - 1]) && char.IsAsciiDigit(text[i + 1]);
            if (i < text.Length && (isDecimal || !isDash && c is not (',' or ';' or '|' or '•' or '·' or '(' or ')' or '[' or ']'))) continue;
            if (i < text.Length && inBrackets && c is not (')' or ']') && isDash) continue;
            if (Spelling.Tidy(text[start..i]) is { Length: > 0 } piece) pieces.Add(new(piece, inBrackets, afterComma));
            (start, afterComma) = (i + 1, c == ',');
            inBrackets = c is '(' or '[' || inBrackets && c is not (')' or ']');
        }
        return pieces;
    }

    [GeneratedRegex(@"^(?:#|no\.? ?|nr\.? ?)?(?<n>[0-9]{1,3}(?:\.? ?[/&] ?[0-9]{1,3})*)(?:\s?[.):;]| [-–—])? *(?=[\p{L}?\-x])(?!(?:st|nd|rd|th)\b)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Numbered();

    [GeneratedRegex(@"^(?<label>[\p{L}][\p{L} /&\-]{0,39}?) ?: ?(?<rest>\S.*)$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Label();

    [GeneratedRegex(@"^(?:[*•·–—+\-]|\[ ?\])\s+", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Bullet();
}

/// <summary>A piece of a line of prose.</summary>
internal sealed record Piece(string Text, bool InBrackets, bool AfterComma = false);
