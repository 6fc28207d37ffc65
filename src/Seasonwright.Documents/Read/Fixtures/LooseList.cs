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
        for (var i = 0; i < table.Rows.Count; i++)
        {
            var row = table.Rows[i];
            var cells = row.Filled.Select(c => c.Cell).ToList();
            if (cells.Count == 0) skipped.Add(Skipped.Of(row.Line, row.Raw, "blank"));
            else if (ListWords.IsTotal(cells[0])) skipped.Add(Skipped.Of(row.Line, row.Raw, "totals"));
            else if (ListWords.IsBye(cells[0])) matches.Add(new ListedMatch(row.Line, row.Raw) { ByeOf = AfterColon(string.Join(' ', cells)), SectionDate = sections.Date, Round = sections.Round });
            else if (Match(row, sections, isBelowMatch: matches.Count > 0 && matches[^1].Line == row.Line - 1) is { } match) matches.Add(match);
            else skipped.Add(Skipped.Of(row.Line, row.Raw, sections.Take(string.Join(' ', cells), matches.Count == 0 && sections.Round.Length == 0 && !IsDayOfMatch(string.Join(' ', cells), table.Rows.Skip(i + 1).FirstOrDefault(below => !below.IsBlank)))));
        }
        return new(Figures.Decide(Sections.WithSquads(matches)), skipped, ValueList<HeadingUse>.Empty, null, sections.Years, []);
    }

    // The last line above the first match is its day, and no title.
    private static bool IsDayOfMatch(string text, CellRow? below)
    {
        var day = new Sections();
        return below is not null && day.Take(text, isTitle: false) == "section" && day.Date is not null && Match(below, day, isBelowMatch: false) is not null;
    }

    private static string AfterColon(string text) => text.Contains(':', StringComparison.Ordinal) ? text[(text.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim()
        : text.Contains(' ', StringComparison.Ordinal) ? text[(text.IndexOf(' ', StringComparison.Ordinal) + 1)..].Trim() : "";

    private static ListedMatch? Match(CellRow row, Sections sections, bool isBelowMatch)
    {
        var filled = row.Filled.ToList();
        var inLine = filled.Count == 1;
        var cells = inLine ? LineCells.Of(filled[0].Cell, row.Raw) : filled.ConvertAll(c => c.Cell);
        var kinds = cells.ConvertAll(KindOf);
        var between = Between(cells, kinds);
        var names = kinds.IndexOf(CellKind.Text);
        FigurePlace Place(int i) => i == between ? FigurePlace.Between : inLine ? new(i - names, InLine: true) : new(filled[i].Column);
        var match = new ListedMatch(row.Line, row.Raw) { SectionDate = sections.Date, Section = sections.Text, Round = sections.Round, Squad = sections.Squad };
        for (var i = 0; i < cells.Count; i++)
        {
            var cell = cells[i];
            match = kinds[i] switch
            {
                CellKind.Date when match.Date.Length == 0 => DateText.Find(cell) is { } date && TimeText.Read(DateText.Without(cell, date)).Time is not null
                    ? match with { Date = cell, KickOff = DateText.Without(cell, date) } : match with { Date = cell },
                CellKind.Time => Weekday(cell) is { } day ? match with { Weekday = day.Weekday, KickOff = day.Time } : match with { KickOff = cell },
                CellKind.Weekday => match with { Weekday = cell },
                CellKind.Figure => match with { Figures = [.. match.Figures, new FigureCell(Place(i), cell)] },
                CellKind.Venue => match with { Venues = [.. match.Venues, cell] },
                CellKind.Status => match with { Status = cell },
                CellKind.Round => match with { Round = cell },
                _ => match,
            };
        }
        if (between > 0)
        {
            var turned = cells[between] is "@";
            return match with { Home = cells[turned ? between + 1 : between - 1], Away = cells[turned ? between - 1 : between + 1], Remarks = Rest(cells, kinds, between - 1, between + 1) };
        }
        for (var i = 0; i < cells.Count; i++)
        {
            if (kinds[i] == CellKind.Versus && i + 1 < cells.Count && kinds[i + 1] == CellKind.Text)
                return match with { Pair = $"{cells[i]} {cells[i + 1]}", Remarks = Rest(cells, kinds, i, i + 1) };
            if (kinds[i] != CellKind.Text) continue;
            var pair = PairText.Read(cells[i]);
            var isMatch = pair.Home is not null || pair.Versus || pair.Venue is not null || match.Venues.Any(venue => VenueText.Mark(venue) is not null) && !ListWords.IsFurniture(cells[i]);
            // "Brovik v Kalnes" alone is a match below a day or another match; anywhere else it may be prose.
            var isPlaced = match.Date.Length + match.KickOff.Length + match.Figures.Length + match.Section.Length > 0 || match.SectionDate is not null || isBelowMatch && cells[i].Split(' ').Any(PairText.IsAgainst);
            if (isMatch && isPlaced && (pair.Home is null || IsName(pair.Home) && IsName(pair.Away!)))
                return match with { Pair = cells[i], Remarks = Rest(cells, kinds, i, i) };
        }
        return null;
    }

    // The cell between the teams: "v", a score, or a time where the score will stand.
    private static int Between(List<string> cells, List<CellKind> kinds) => Enumerable.Range(0, cells.Count).FirstOrDefault(i => i > 0 && i < cells.Count - 1
        && kinds[i] is CellKind.Versus or CellKind.Figure or CellKind.Time or CellKind.Status && kinds[i - 1] == CellKind.Text && kinds[i + 1] == CellKind.Text && !ListWords.IsFurniture(cells[i + 1]));

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
        if (FigureCell.Is(cell)) return CellKind.Figure;
        if (TimeText.Read(Weekday(cell)?.Time ?? cell).Sense is not (TimeSense.Unreadable or TimeSense.Empty)) return CellKind.Time;
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
        Figure,
        Versus,
        Venue,
        Status,
        Round,
        Other,
    }
}
