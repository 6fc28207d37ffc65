namespace Seasonwright.Cli.Tests;

public class TableTests
{
    private static readonly Table<string> Words = new([new("words", word => word)]);

    /// <summary>Source: OWASP ASVS 5.0, requirement 1.2.10 (= + - @ and tab behind a single quote); RFC 4180 for the quotes. Line breaks and plain numbers: common practice, no source.</summary>
    [Theory]
    [InlineData("=HYPERLINK(1)", "'=HYPERLINK(1)")]
    [InlineData("=cmd(\"a\",1)", "\"'=cmd(\"\"a\"\",1)\"")]
    [InlineData("+1+1", "'+1+1")]
    [InlineData("-2+3", "'-2+3")]
    [InlineData("-Brovik", "'-Brovik")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\r=1", "\"'\r=1\"")]
    [InlineData("\n=1", "\"'\n=1\"")]
    [InlineData("-5", "-5")]
    [InlineData("+2", "+2")]
    [InlineData("-0.5", "-0.5")]
    [InlineData("31-24", "31-24")]
    [InlineData("Vale = Brovik", "Vale = Brovik")]
    [InlineData("", "")]
    public void Csv_holds_no_formula(string cell, string expected)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        Words.WriteCsv([cell], writer);
        Assert.Equal($"words\n{expected}\n", writer.ToString());
    }

    [Fact]
    public void A_table_for_people_is_as_written()
    {
        using var writer = new StringWriter { NewLine = "\n" };
        Words.Write(["=1+1"], writer);
        Assert.Equal("words\n=1+1\n", writer.ToString());
    }

    [Fact]
    public void A_remark_of_a_list_is_disarmed_on_its_way_out()
    {
        using var session = new Session();
        session.Write("armed.csv", "Date,Home,Away,Place\n2027-09-04,Vale,Brovik,@SUM(A1)\n", append: false);
        Assert.Contains(",'@SUM(A1),", session.Run("fixtures ./armed.csv --team Vale --format csv").Output, StringComparison.Ordinal);
        Assert.Contains("\"@SUM(A1)\"", session.Run("fixtures ./armed.csv --team Vale --format json").Output, StringComparison.Ordinal);
    }
}
