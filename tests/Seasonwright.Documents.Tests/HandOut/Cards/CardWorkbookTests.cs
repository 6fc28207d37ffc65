using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Cards;
using static Seasonwright.Documents.Tests.HandOut.Cards.SampleCards;

namespace Seasonwright.Documents.Tests.HandOut.Cards;

/// <summary>Cards as a workbook. Source of the form: ISO/IEC 29500, by the Open XML SDK's validator.</summary>
public class CardWorkbookTests
{
    private static readonly OpenXmlValidator Validator = new(FileFormatVersions.Office2007);

    private static BookParts Written(params SquadCards[] all)
    {
        var file = HandOuts.CardWorkbook(all).Bytes;
        Assert.Equal(file, HandOuts.CardWorkbook(all).Bytes);
        using var document = SpreadsheetDocument.Open(new MemoryStream(file), isEditable: false);
        Assert.Equal("", string.Join(Environment.NewLine, Validator.Validate(document).Take(3).Select(error => $"{error.Description} {error.Part?.Uri} {error.Path?.XPath}")));
        return new BookParts(file);
    }

    private static List<string> Texts(BookParts book) => [.. book.Cells.Select(book.Value).OfType<string>()];

    [Fact]
    public void A_row_for_each_athlete_and_exercise_and_one_for_who_asks_first()
    {
        var book = Written(Of([Player("ida", "Ida", "4"), Player("eva", "Eva").Reported(Availability.Modified(Core.Squad.Restrictions.None))]));
        var texts = Texts(book);
        Assert.Equal((3, 1), (texts.Count(text => text == "4 Ida"), texts.Count(text => text == "Eva")));
        Assert.Contains(texts, text => text == "82.5 kg");
        Assert.Contains(texts, text => text == "25 + 5 + 1.25 a side");
        Assert.Contains(texts, text => text == "modified · Ask the coach before you begin.");
    }

    [Fact]
    public void Every_set_has_a_cell()
    {
        var many = new Workout(new("many"), "Many", [new(PartKind.Straight, [Item("back-squat", 9, 3, Effort.OfMax(80)), Item("leg-press", 2, 8, Effort.Free)], 60)], Progression.None);
        var texts = Texts(Written(Of([Player("ida", "Ida")], workout: many)));
        Assert.Contains(texts, text => text == "9");
        Assert.DoesNotContain(texts, text => text == "10");
        Assert.Equal(7, texts.Count(text => text == "–"));
    }

    [Fact]
    public void Two_sessions_of_a_day_are_told_apart()
    {
        var one = Of([Player("ida", "Ida")]);
        Assert.Contains(Texts(Written(one, one with { Title = "Arms" })), text => text == "Arms");
        Assert.DoesNotContain(Texts(Written(one)), text => text == "Session");
    }

    [Fact]
    public void Nobody_takes_part() => Assert.DoesNotContain(Texts(Written(Of([]))), text => text == "–");

    [Theory]
    [InlineData("=HYPERLINK(\"http://example.invalid\",\"Ida\")")]
    [InlineData("+1+1")]
    [InlineData("-2+3")]
    [InlineData("@SUM(A1:A9)")]
    [InlineData("\t=1+1")]
    public void Names_and_notes_are_no_formulas(string text)
    {
        var workout = new Workout(new("w"), text, [new(PartKind.Straight, [Item("back-squat", 3, 3, Effort.OfMax(80), note: text)], 0)], Progression.None);
        var book = Written(Of([Player("ida", text)], workout: workout));
        Assert.Contains(book.Cells, cell => book.Value(cell)?.EndsWith(text.Trim()[1..], StringComparison.Ordinal) == true);
        foreach (var cell in book.Cells)
        {
            Assert.Null(cell.Element(BookParts.Main + "f"));
            if (cell.Attribute("t")?.Value == "s" && book.Value(cell) is ['=' or '+' or '-' or '@' or '\t' or '\'', ..]) Assert.Equal("1", book.Look(cell).Attribute("quotePrefix")?.Value);
        }
    }
}
