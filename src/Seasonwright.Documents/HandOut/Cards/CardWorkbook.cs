using System.Globalization;
using Seasonwright.Documents.HandOut.Workbooks;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Cards;

/// <summary>The same as a workbook: a row for each athlete and exercise, with cells for every set; a row for who has to ask first.</summary>
internal static class CardWorkbook
{
    private static readonly CardLine Nothing = new("", "", "", "", "", [], "", 0, false);

    /// <param name="all">Of the sessions of one day, at least one.</param>
    public static byte[] Write(IReadOnlyList<SquadCards> all)
    {
        var cards = all[0];
        List<(string Session, Card Card, CardLine Line)> rows = [.. from one in all from card in one.Cards from line in card.Lines.DefaultIfEmpty(Nothing) select (one.Title, card, line)];
        var sheet = new ListSheet<(string Session, Card Card, CardLine Line)>("Cards", rows)
            .Perhaps(Say("card.session"), 26, row => all.Count > 1 ? row.Session : null)
            .Text(Say("card.athlete"), 26, row => row.Card.Number.Length > 0 ? $"{row.Card.Number} {row.Card.Name}" : row.Card.Name)
            .Text(Say("card.place"), 7, row => row.Line.Place)
            .Text(Say("card.exercise"), 34, row => row.Line.Exercise)
            .Text(Say("card.sets"), 14, row => row.Line.Sets)
            .Text(Say("card.weight"), 18, row => row.Line.Weight)
            .Text(Say("card.plates"), 24, row => row.Line.Plates)
            .Perhaps(Say("card.how"), 34, row => row.Line.How.Length > 0 ? row.Line.How : null)
            .Perhaps(Say("card.notes"), 26, row => string.Join(" · ", row.Card.Notes.Prepend(row.Card.IsModified ? Say("card.modified") : "").Where(note => note.Length > 0)) is { Length: > 0 } notes ? notes : null);
        for (var set = 1; set <= rows.Max(row => (int?)row.Line.Boxes); set++)
        {
            var number = set;
            sheet = sheet.Add(number.ToString(CultureInfo.InvariantCulture), 8, (row, _) => new(number > row.Line.Boxes ? "–" : null, SheetLooks.Number));
        }
        return WorkbookFile.Write([sheet.Sheet(Say("card.about", string.Join(" · ", all.Select(one => one.Title)), cards.When))], Say("card.title", cards.Shared.Name, cards.Title), cards.Shared.Edition, cards.Shared.Setup.Locale);
    }
}
