using Seasonwright.Core;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Cards;

/// <summary>
/// Cards on upright paper, one, two, four or six a page with a cut between: the name and each weight as large as there is room for, a box for every set. Everything on
/// a card grows and shrinks together, so that one athlete's card is never read worse than the room it has allows.
/// </summary>
public static class CardPaper
{
    private const double Margin = 24, PointsPerPx = 0.75, Gutter = 12, Inset = 10;

    /// <summary>Heights in sizes of the card's text: of the head, an exercise's name with its weight, how it is done, a line of words, the foot.</summary>
    private const double Head = 3.3, Row = 3.5, How = 1.2, Words = 1.45, Foot = 1.3;

    /// <summary>The smallest text of a card, in sizes of its text.</summary>
    private const double Small = 0.72;

    /// <summary>Lines of what gets ready; more are cut.</summary>
    private const int MostWarmUp = 4;

    /// <summary>The card's text is at most so many px, and so much of the card's width.</summary>
    private const double Largest = 34, WidthShare = 0.043;

    /// <summary>Shares of a card's width: where the weight begins, where the boxes do.</summary>
    private const double WeightAt = 0.34, BoxesAt = 0.7;

    /// <summary>A text that is too long for its place is set smaller down to this share, and to the least that may stand on the paper, before it is cut.</summary>
    private const double Shrinks = 0.62;

    private const int MostBoxes = 6;

    /// <summary>How many cards a page can hold.</summary>
    public static ValueList<int> Counts { get; } = [1, 2, 4, 6];

    /// <param name="perPage">One of <see cref="Counts"/>.</param>
    /// <param name="paper">Upright.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another count.</exception>
    public static ValueList<SheetDrawing> Of(SquadCards cards, int perPage, PaperSize paper)
    {
        if (!Counts.Contains(perPage)) throw new ArgumentOutOfRangeException(nameof(perPage), perPage, "A page holds one, two, four or six cards.");
        var (across, down) = perPage switch { 1 => (1, 1), 2 => (1, 2), 4 => (2, 2), _ => (2, 3) };
        var (width, height) = ((paper.Width - 2 * Margin) / PointsPerPx, (paper.Height - 2 * Margin) / PointsPerPx);
        var (wide, high) = ((width - (across - 1) * Gutter) / across, (height - (down - 1) * Gutter) / down);
        var (title, least) = (Say("card.title", cards.Shared.Name, cards.Title), paper.LeastText / PointsPerPx);
        var inner = new Area(0, 0, wide, high).Inset(Inset, Inset);
        return cards.Cards.SelectMany(card => Parts(card, inner, least / Small)).Chunk(perPage).Select(page => new SheetDrawing(title, paper.Width, paper.Height, Margin, PointsPerPx,
            [new TrackDrawing("cards", title, height, page.SelectMany((card, at) => Draw(card, cards, new Area(at % across * (wide + Gutter), at / across * (high + Gutter), wide, high), least)).ToValueList(), [])])).ToValueList();
    }

    /// <summary>A card that has no room at a size that can be read goes on on the next.</summary>
    /// <param name="least">Of the card's text.</param>
    private static IEnumerable<Card> Parts(Card card, Area inner, double least)
    {
        var rest = card;
        while (true)
        {
            var goesOn = rest with { Notes = [.. rest.Notes, Say("card.goes-on")] };
            if (rest.Lines.Count <= 1 || HasRoom(rest)) break;
            var count = Enumerable.Range(1, rest.Lines.Count - 1).LastOrDefault(count => HasRoom(goesOn with { Lines = rest.Lines.Take(count).ToValueList() }), 1);
            yield return goesOn with { Lines = rest.Lines.Take(count).ToValueList() };
            rest = rest with { WarmUp = "", Lines = rest.Lines.Skip(count).ToValueList() };
        }
        yield return rest;

        bool HasRoom(Card part) => Height(part, inner.Width, least) <= inner.Height;
    }

    private static IEnumerable<Shape> Draw(Card card, SquadCards cards, Area area, double least)
    {
        var inner = area.Inset(Inset, Inset);
        var pen = new CardPen(inner, Size(card, inner, least / Small), least);
        yield return new Box(area, Looks.EventUnsure, 4);
        foreach (var shape in pen.Draw(card, cards)) yield return shape;
    }

    /// <summary>The largest with which everything has room, and no less than can be read.</summary>
    private static double Size(Card card, Area inner, double least)
    {
        var size = Math.Min(Largest, inner.Width * WidthShare);
        // Words break otherwise at another size.
        while (size > least && Height(card, inner.Width, size) > inner.Height) size = Math.Max(least, size * 0.97);
        return size;
    }

    private static double Height(Card card, double width, double size) =>
        size * (Head + card.Lines.Sum(RowOf) + Foot + Words * Said(card, width, size).Count());

    private static double RowOf(CardLine line) => line.How.Length + line.Plates.Length > 0 ? Row + How : Row;

    /// <summary>Lines of words above the exercises.</summary>
    private static IEnumerable<string> Said(Card card, double width, double size)
    {
        var style = new TextStyle(size);
        var ready = card.WarmUp.Length > 0 ? TextWrap.Lines(Say("card.warm-up", card.WarmUp), width, style) : [];
        return card.Notes.SelectMany(note => TextWrap.Lines(note, width, style))
            .Concat(ready.Take(MostWarmUp - 1)).Concat(ready.Count < MostWarmUp ? [] : [TextFit.Fit(string.Join(' ', ready.Skip(MostWarmUp - 1)), width, style).Text]);
    }

    /// <summary>Draws one card at one size of text.</summary>
    private sealed class CardPen(Area area, double size, double least)
    {
        private readonly TextStyle name = new(size * 1.6, FontWeight.SemiBold), strong = new(size, FontWeight.SemiBold), body = new(size * 0.9), small = new(size * Small), large = new(size * 1.45, FontWeight.SemiBold);
        private readonly List<Shape> shapes = [];
        private double top = area.Y;

        public List<Shape> Draw(Card card, SquadCards cards)
        {
            DrawHead(card, cards);
            foreach (var text in Said(card, area.Width, size)) Words(text);
            foreach (var line in card.Lines) DrawLine(line);
            Text(area.X, area.Bottom - size * Foot * 0.8, area.Width, Say("card.foot", cards.Shared.EditionWords, Say("card.caution")), small, Looks.Muted);
            return shapes;
        }

        private void DrawHead(Card card, SquadCards cards)
        {
            var room = area.Width;
            if (card.IsModified)
            {
                var word = Say("card.modified");
                var wide = TextWidths.Of(word, strong) + size;
                shapes.Add(new Box(new(area.Right - wide, top, wide, size * 1.6), Looks.EventUnsure, 3));
                Text(area.Right - wide / 2, top + size * 0.3, wide, word, strong, Looks.Ink, TextAnchor.Middle);
                room -= wide + size / 2;
            }
            Text(area.X, top, room, card.Number.Length > 0 ? $"{card.Number} {card.Name}" : card.Name, name, Looks.Ink);
            Text(area.X, top + size * 1.85, area.Width, $"{cards.Title} · {cards.When}", body, Looks.Muted);
            top += size * Head;
        }

        private void Words(string text)
        {
            Text(area.X, top, area.Width, text, body, Looks.Ink);
            top += size * CardPaper.Words;
        }

        private void DrawLine(CardLine line)
        {
            shapes.Add(new Line(new(area.X, top), new(area.Right, top), Looks.Rule));
            var (indent, weight, boxes) = (area.X + size * 1.7, area.X + area.Width * WeightAt, area.X + area.Width * BoxesAt);
            var second = top + size * 1.55;
            Text(area.X, top + size * 0.3, size * 1.6, line.Place, strong, Looks.Muted);
            Text(indent, top + size * 0.3, boxes - indent - 4, line.Instead ? Say("card.instead", line.Exercise) : line.Exercise, strong, Looks.Ink);
            Text(indent, second + size * 0.25, (line.Weight.Length > 0 ? weight : boxes) - indent - 4, line.Sets, strong, Looks.Ink);
            Text(weight, second, boxes - weight - 4, line.Weight, line.Plates.Length > 0 ? large : strong, Looks.Ink);
            if (line.PerSide.Count > 0) Plates(line.PerSide, weight + TextWidths.Of(line.Weight, large) + size * 0.7, boxes - size * 0.4, second + size * 0.95);
            Text(indent, top + size * 3.25, boxes - indent - 4, line.Plates, body, Looks.Ink);
            var how = line.Plates.Length > 0 ? indent + TextWidths.Of(line.Plates, body) + size * 0.6 : indent;
            // Below the boxes there is room, but for what says how many more sets there are.
            Text(how, top + size * 3.4, (line.Boxes > MostBoxes ? boxes - 4 : area.Right) - how, line.How, small, Looks.Muted);
            Boxes(line.Boxes, boxes);
            top += size * RowOf(line);
        }

        /// <summary>The plates of one side as they hang on the bar, the heaviest inside and largest; none where there is no room for all.</summary>
        private void Plates(ValueList<decimal> perSide, double left, double right, double middle)
        {
            var (wide, step) = (size * 0.3, size * 0.4);
            if (left + size * 0.3 + perSide.Count * step > right) return;
            shapes.Add(new Line(new(left, middle), new(left + size * 0.5 + perSide.Count * step, middle), Looks.Rule));
            foreach (var (plate, place) in perSide.Select((plate, place) => (plate, place)))
            {
                var high = size * (0.5 + 1.3 * Math.Sqrt((double)(plate / perSide[0])) * Math.Min(1, Math.Sqrt((double)perSide[0] / 20)));
                shapes.Add(new Box(new(left + size * 0.2 + place * step, middle - high / 2, wide, high), Looks.Plate, 1));
            }
        }

        /// <summary>One a set; of more than there is room for the last says how many more.</summary>
        private void Boxes(int count, double left)
        {
            var (shown, room) = (Math.Min(count, MostBoxes), area.Right - left);
            var (wide, step) = (Math.Min(size * 1.9, room / shown - 3), Math.Min(size * 1.9 + 4, room / shown));
            for (var box = 0; box < shown; box++)
                shapes.Add(new Box(new(left + box * step, top + size * 0.55, wide, size * 2.3), Looks.EventUnsure, 2));
            if (count > shown) Text(area.Right, top + size * 2.9, room, Say("card.more-sets", count - shown), small, Looks.Muted, TextAnchor.End);
        }

        private void Text(double x, double at, double room, string text, TextStyle style, TextLook look, TextAnchor anchor = TextAnchor.Start)
        {
            if (TextWidths.Of(text, style) is var wide && wide > room && room > 0) style = new(Math.Min(style.Size, Math.Max(least, style.Size * Math.Max(Shrinks, room / wide * 0.995))), style.Weight);
            if (text.Length > 0 && TextFit.Fit(text, room, style) is { Kind: not FitKind.Nothing } fitted) shapes.Add(new TextRun(new(x, at + style.Size * 0.97), fitted.Text, style, look, anchor));
        }
    }
}
