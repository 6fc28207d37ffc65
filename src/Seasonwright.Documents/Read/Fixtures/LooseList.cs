using Seasonwright.Core;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Lists without headings, as pasted from a page or a message: headings between the rows give dates and rounds, and each row is understood by itself.</summary>
internal static class LooseList
{
    public static ListLayout Read(CellTable table)
    {
        var (matches, skipped, sections) = (new List<ListedMatch>(), new List<Skipped>(), new Sections());
        foreach (var row in table.Rows)
        {
            var cells = row.Filled.Select(c => c.Cell).ToList();
            if (cells.Count == 0) skipped.Add(Skipped.Of(row.Line, row.Raw, "blank"));
            else if (ListWords.IsTotal(cells[0])) skipped.Add(Skipped.Of(row.Line, row.Raw, "totals"));
            else if (ListWords.IsBye(cells[0])) matches.Add(new ListedMatch(row.Line, row.Raw) { ByeOf = AfterColon(string.Join(' ', cells)), SectionDate = sections.Date, Round = sections.Round });
            else if (Match(row, cells.Count == 1 ? LineCells.Of(cells[0]) : cells, sections) is { } match) matches.Add(match);
            else skipped.Add(Skipped.Of(row.Line, row.Raw, sections.Take(string.Join(' ', cells), matches.Count == 0 && sections.Round.Length == 0)));
        }
        return new(matches, skipped, ValueList<HeadingUse>.Empty, null, sections.Years, []);
    }

    private static string AfterColon(string text) => text.Contains(':', StringComparison.Ordinal) ? text[(text.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim()
        : text.Contains(' ', StringComparison.Ordinal) ? text[(text.IndexOf(' ', StringComparison.Ordinal) + 1)..].Trim() : "";

    private static ListedMatch? Match(CellRow row, List<string> cells, Sections sections)
    {
        var match = new ListedMatch(row.Line, row.Raw) { SectionDate = sections.Date, Section = sections.Text, Round = sections.Round };
        var kinds = cells.Select(KindOf).ToList();
        foreach (var (cell, kind) in cells.Zip(kinds))
        {
            match = kind switch
            {
                CellKind.Date when match.Date.Length == 0 => DateText.Find(cell) is { } date && TimeText.Read(DateText.Without(cell, date)).Time is not null
                    ? match with { Date = cell, KickOff = DateText.Without(cell, date) } : match with { Date = cell },
                CellKind.Time => Weekday(cell) is { } day ? match with { Weekday = day.Weekday, KickOff = day.Time } : match with { KickOff = cell },
                CellKind.Weekday => match with { Weekday = cell },
                CellKind.Score => match with { Result = cell },
                CellKind.Venue => match with { Venues = [.. match.Venues, cell] },
                CellKind.Status => match with { Status = cell },
                CellKind.Round => match with { Round = cell },
                _ => match,
            };
        }
        // The cell between the teams: "v", a score, or a time where the score will stand.
        for (var i = 1; i < cells.Count - 1; i++)
        {
            if (kinds[i] is not (CellKind.Versus or CellKind.Score or CellKind.Time or CellKind.Status) || kinds[i - 1] != CellKind.Text || kinds[i + 1] != CellKind.Text) continue;
            if (ListWords.IsFurniture(cells[i + 1])) continue;
            var turned = cells[i] is "@";
            return match with { Home = cells[turned ? i + 1 : i - 1], Away = cells[turned ? i - 1 : i + 1], Remarks = Rest(cells, kinds, i - 1, i + 1) };
        }
        for (var i = 0; i < cells.Count; i++)
        {
            if (kinds[i] == CellKind.Versus && i + 1 < cells.Count && kinds[i + 1] == CellKind.Text)
                return match with { Pair = $"{cells[i]} {cells[i + 1]}", Remarks = Rest(cells, kinds, i, i + 1) };
            if (kinds[i] != CellKind.Text) continue;
            var pair = PairText.Read(cells[i]);
            var isMatch = pair.Home is not null || pair.Versus || pair.Venue is not null || match.Venues.Any(venue => VenueText.Mark(venue) is not null) && !ListWords.IsFurniture(cells[i]);
            if (isMatch && (pair.Home is null || IsName(pair.Home) && IsName(pair.Away!)) && (match.Date.Length > 0 || match.KickOff.Length > 0 || match.SectionDate is not null || match.Section.Length > 0))
                return match with { Pair = cells[i], Remarks = Rest(cells, kinds, i, i) };
        }
        return null;
    }

    private static string Rest(List<string> cells, List<CellKind> kinds, int from, int to) =>
        string.Join("; ", cells.Where((cell, i) => kinds[i] == CellKind.Text && (i < from || i > to) && !ListWords.IsFurniture(cell)));

    // "Round 3 – weekend of ..." is a heading with a dash, not a pair.
    private static bool IsName(string text) => text.Any(char.IsLetter) && text.Length <= 80 && RoundText.InHeading(text) != text && CalendarWords.Month(text) is null;

    private static CellKind KindOf(string cell)
    {
        if (cell.ToUpperInvariant() is "V" or "VS" or "V." or "VS." or "@" or "-" or "–" or ":" or "GEGEN" or "VERSUS") return CellKind.Versus;
        if (CalendarWords.Weekday(cell) is not null) return CellKind.Weekday;
        if (DateText.Find(cell) is { } date && (DateText.Without(cell, date) is { } rest) && (rest.Length == 0 || TimeText.Read(rest).Sense is not TimeSense.Unreadable)) return CellKind.Date;
        if (ListWords.IsPostponed(cell) || ListWords.IsCancelled(cell)) return cell.Length <= 20 ? CellKind.Status : CellKind.Text;
        var time = TimeText.Read(Weekday(cell)?.Time ?? cell).Sense is TimeSense.Known or TimeSense.Unknown or TimeSense.Doubtful or TimeSense.JustAfterMidnight;
        // "21:15" may be a score too; a score that could be a kick-off is left to the time, and told apart by its dash or impossible hour.
        if (time && !cell.Contains('–', StringComparison.Ordinal)) return CellKind.Time;
        if (ResultText.Read(cell) is not null) return CellKind.Score;
        if (VenueText.Mark(cell) is not null && cell.Length <= 7) return CellKind.Venue;
        if (RoundText.InHeading(cell) is { } round && round.Length == cell.Length) return CellKind.Round;
        return cell.Any(char.IsLetter) ? CellKind.Text : CellKind.Other;
    }

    // "Sat 18:00"
    private static (string Weekday, string Time)? Weekday(string cell)
    {
        var space = cell.IndexOf(' ', StringComparison.Ordinal);
        return space > 0 && CalendarWords.Weekday(cell[..space].TrimEnd(',', '.')) is not null && TimeText.Read(cell[(space + 1)..]).Sense is not TimeSense.Unreadable ? (cell[..space], cell[(space + 1)..]) : null;
    }

    private enum CellKind
    {
        Text,
        Date,
        Weekday,
        Time,
        Score,
        Versus,
        Venue,
        Status,
        Round,
        Other,
    }
}
