using Seasonwright.Documents.Read;

namespace Seasonwright.Documents.Tests.Read;

public class CellTableTests
{
    [Theory]
    [InlineData("a,b;c,d\n1,2;3,4\n5,6;7,8\n", ',')]
    [InlineData("Datum;Gegner\n5,9;Kalnes\n6,9;Brovik, SV\n", ';')]
    [InlineData("Page title, with a comma\n\nSat\tKalnes\tv\tBrovik\nSun\tBrovik\tv\tKalnes\n", '\t')]
    [InlineData("a|b|c\n1|2|3\n", '|')]
    [InlineData("sep=;\na,b;c\n", ';')]
    public void The_whole_file_speaks_for_its_delimiter(string text, char delimiter) => Assert.Equal(delimiter, Read(text).Delimiter);

    [Fact]
    public void Prose_has_no_cells()
    {
        var table = Read("TERM DATES\n* Carol service Thu 17 Dec, from 3 pm\n* INSET day, Tue 5 Jan\nNB more to come\n* Easter\n");
        Assert.Null(table.Delimiter);
        Assert.Equal("* Carol service Thu 17 Dec, from 3 pm", table.Rows[1][0]);
    }

    [Fact]
    public void Every_row_knows_its_physical_line_and_a_quoted_line_break_is_one_space()
    {
        var table = Read("id,opponent,remarks\n1,\"Querrin Bay\n Handball\",\"say \"\"hi\"\"\"\n\n2,Skarholm\u00A0 IF,\n");
        Assert.Equal([1, 2, 4, 5], table.Rows.Select(row => row.Line));
        Assert.Equal(("Querrin Bay Handball", "say \"hi\"", "Skarholm IF", ""), (table.Rows[1][1], table.Rows[1][2], table.Rows[3][1], table.Rows[3][9]));
    }

    [Fact]
    public void A_quote_that_is_never_closed_is_told_with_its_line()
    {
        var problem = Assert.Single(Read("a,b\n1,\"open\n2,x\n3,y\n").Problems);
        Assert.Equal(("quote-open", 2), (problem.Id, problem.Line));
    }

    private static CellTable Read(string text) => CellTable.Read(SourceText.OfText("list", text));
}
