using Seasonwright.Core;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Cards;
using Seasonwright.Documents.Tests.Year;
using static Seasonwright.Documents.Tests.HandOut.Cards.SampleCards;

namespace Seasonwright.Documents.Tests.HandOut.Cards;

/// <summary>Cards on paper: all of each within its frame, nothing over anything else, nothing too small to read.</summary>
public class CardPaperTests
{
    private static readonly string[] Names = ["Ida Norlund", "Wilhelmina-Theodora van der Meulenbroek-Thistlewick of Harbour Vale", new string('W', 120), "港湾 ハンドボール", "i"];

    public static TheoryData<int, string> Papers => new(CardPaper.Counts.SelectMany(count => new[] { PaperSize.A4, PaperSize.Letter }.Select(paper => (count, paper.Id))));

    /// <param name="name">Which of the names; the longer it is, the longer is all the rest.</param>
    private static Card Made(int lines, int name, bool isModified = true) => new(name == 3 ? "" : "4/5", Names[name], string.Join(" · ", Enumerable.Repeat("Goblet squat 2 x 8", name * 4)),
        [.. Enumerable.Range(0, lines).Select(at => new CardLine(at % 2 == 0 ? "A" : $"B{at}", at % 3 == 2 ? Names[name] : "Rear-foot-elevated split squat", "4 x 12 each side", name == 2 ? "leave 10 in reserve" : "102.5 kg",
            at % 3 == 0 ? "" : "25 + 10 + 5 + 1.25 a side", at % 3 == 0 ? [] : [25, 10, 5, 1.25m], at % 4 == 3 ? "" : string.Concat(Enumerable.Repeat("tempo 3-1-X-0 · ", 1 + name)), 1 + at % 20, at % 5 == 0))],
        name == 2 ? ["Ask the coach before you begin.", "At most 30 minutes today.", "Nothing close to the most you can lift; add weight only with the coach."] : [], isModified);

    private static SquadCards With(IEnumerable<Card> cards) => Of([]) with { Cards = cards.ToValueList() };

    [Theory]
    [MemberData(nameof(Papers))]
    public void Everything_has_its_place(int count, string id)
    {
        var paper = PaperSize.Find(id)!;
        foreach (var lines in Enumerable.Range(0, 15))
            foreach (var name in Enumerable.Range(0, Names.Length))
            {
                var cards = Enumerable.Range(0, 3).Select(at => Made(lines, name, at % 2 == 0)).ToList();
                var pages = CardPaper.Of(With(cards), count, paper);
                var drawn = pages.SelectMany(CardsOf).ToList();
                var what = $"{count} a page on {id}, {lines} lines, name {name}";
                Assert.True(drawn.Count >= 3, what);
                Assert.Equal((drawn.Count + count - 1) / count, pages.Count);
                // As many boxes and exercises as there are, whether a card goes on on another or not.
                Assert.Equal(cards.Sum(card => card.Lines.Count), drawn.Sum(card => card.Shapes.OfType<TextRun>().Count(text => text.Look == Looks.Muted && (text.Text == "A" || text.Text.StartsWith('B') && text.Text.Length <= 3))));
                foreach (var (frame, shapes) in drawn)
                {
                    Assert.True(frame.X >= 0 && frame.Y >= 0 && frame.Right <= (paper.Width - 48) / 0.75 + 0.02 && frame.Bottom <= (paper.Height - 48) / 0.75 + 0.02, what);
                    var texts = shapes.OfType<TextRun>().Select(text => (Area: Ink.Around(text), text)).ToList();
                    var boxes = shapes.OfType<Box>().ToList();
                    foreach (var (area, text) in texts)
                    {
                        Assert.True(IsWithin(area, frame), $"{what}: \"{text.Text}\" {area} leaves {frame}");
                        Assert.True(text.Style.Size * 0.75 >= paper.LeastText - 0.01, $"{what}: \"{text.Text}\" is {text.Style.Size * 0.75} pt");
                        foreach (var box in boxes.Where(box => Ink.Overlaps(area, box.Area)))
                            Assert.True(text.Text == "modified" && IsWithin(area, box.Area), $"{what}: \"{text.Text}\" {area} over {box.Area}");
                    }
                    foreach (var (one, other) in texts.SelectMany((one, at) => texts.Skip(at + 1).Select(other => (one, other))))
                        Assert.False(Ink.Overlaps(one.Area, other.Area), $"{what}: \"{one.text.Text}\" over \"{other.text.Text}\"");
                    Assert.All(boxes, box => Assert.True(IsWithin(box.Area, frame), what));
                    foreach (var (one, other) in boxes.SelectMany((one, at) => boxes.Skip(at + 1).Select(other => (one, other))))
                        Assert.False(Ink.Overlaps(one.Area, other.Area), $"{what}: boxes {one.Area} {other.Area}");
                }
            }
    }

    /// <summary>A usual session is one card at every count.</summary>
    [Theory]
    [MemberData(nameof(Papers))]
    public void Four_exercises_stay_on_one_card(int count, string id) => Assert.Equal(7, CardPaper.Of(With(Enumerable.Range(0, 7).Select(_ => Made(4, 0))), count, PaperSize.Find(id)!).SelectMany(CardsOf).Count());

    [Fact]
    public void What_has_no_room_goes_on_on_the_next_card_and_says_so()
    {
        var drawn = CardPaper.Of(With([Made(14, 0)]), 6, PaperSize.A4).SelectMany(CardsOf).ToList();
        Assert.True(drawn.Count > 1);
        Assert.All(drawn, card => Assert.Contains(card.Shapes.OfType<TextRun>(), text => text.Text == "4/5 Ida Norlund"));
        Assert.Equal(drawn.Count - 1, drawn.Count(card => card.Shapes.OfType<TextRun>().Any(text => text.Text == "Goes on on the next card.")));
        Assert.DoesNotContain(drawn[^1].Shapes.OfType<TextRun>(), text => text.Text == "Goes on on the next card.");
    }

    [Fact]
    public void Another_count_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => CardPaper.Of(With([]), 3, PaperSize.A4));

    [Fact]
    public void A_squad_of_forty_is_the_same_bytes_twice()
    {
        var cards = Of([.. Enumerable.Range(1, 40).Select(n => Player($"p{n}", $"Player {n}", $"{n}", squat: 60 + n))]);
        Assert.Equal(40, cards.Cards.Count);
        foreach (var count in CardPaper.Counts)
        {
            Assert.Equal((40 + count - 1) / count, CardPaper.Of(cards, count, PaperSize.A4).Count);
            Assert.Equal(HandOuts.Cards([cards], count, PaperSize.A4).Bytes, HandOuts.Cards([cards], count, PaperSize.A4).Bytes);
        }
    }

    private static bool IsWithin(Area area, Area frame) => area.X >= frame.X - 0.02 && area.Y >= frame.Y - 0.02 && area.Right <= frame.Right + 0.02 && area.Bottom <= frame.Bottom + 0.02;

    /// <summary>The frame of a card has rounder corners than any other box; what follows it is its own.</summary>
    private static IEnumerable<(Area Frame, List<Shape> Shapes)> CardsOf(SheetDrawing page)
    {
        List<(Area Frame, List<Shape> Shapes)> cards = [];
        foreach (var shape in page.Tracks.SelectMany(track => track.Flat()))
        {
            if (shape is Box { Corner: 4 } frame) cards.Add((frame.Area, []));
            else cards[^1].Shapes.Add(shape);
        }
        return cards;
    }
}
