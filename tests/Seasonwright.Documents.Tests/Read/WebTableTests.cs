using System.Text;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>
/// Lists on web pages, copied or saved as HTML. Cells are placed as the HTML standard places them ("Forming a table": a cell that spans rows or
/// columns takes those places, and the next cell the first one free). The pages are ours.
/// </summary>
public sealed class WebTableTests
{
    /// <summary>A table for each round, between the navigation and the standings.</summary>
    private const string Rounds = """
        <!DOCTYPE html><html><head><title>Lantern League</title><style>td { content: "Sat 1 Jan 2000" }</style></head><body>
        <ul><li><a href="/">Start</a><li><a href="/teams">Teams</a></ul>
        <h1>Lantern League 2026/27</h1>
        <h2>Round 1</h2>
        <table><thead><tr><th>Date<th>Time<th>Home<th>Away<tbody>
        <tr><td rowspan="2">Sat 5 Sep 2026<td>18:00<td>Harbour Vale<td>Kalnes<tr><td>20:00<td>Turnes<td>Brovik</table>
        <p><b>Round 2</b></p>
        <table><thead><tr><th>Date<th>Time<th>Home<th>Away<tbody>
        <tr><td>Sat 12 Sep 2026<td>16:30<td>Brovik<td>Harbour Vale<tr><td colspan="4">Turnes: bye</table>
        <h2>Standings</h2>
        <table><tr><th>#<th>Team<th>P<th>Pts<tr><td>1<td>Kalnes<td>1<td>2<tr><td>2<td>Brovik<td>1<td>2<tr><td>3<td>Turnes<td>1<td>0<tr><td>4<td>Harbour Vale<td>1<td>0<tr><td>5<td>Tarnholt<td>0<td>0<tr><td>6<td>Skarholm<td>0<td>0</table>
        <script>document.write("<table><tr><td>Sat 19 Sep 2026<td>Harbour Vale<td>Nobody</table>")</script></body></html>
        """;

    [Fact]
    public void A_list_cut_into_a_table_for_each_round_is_one_list_and_standings_are_none_of_it()
    {
        var list = FixtureReader.Read(SourceText.OfText("page", Rounds), new FixtureOptions("Harbour Vale"));
        Assert.Empty(list.Problems);
        Assert.Equal(["2026-09-05 18:00 Kalnes Round 1", "2026-09-12 16:30 Brovik Round 2"], list.Rows.Select(row => FormattableString.Invariant($"{row.Day:yyyy-MM-dd} {row.KickOff:HH:mm} {row.Opponent} {row.Round}")), StringComparer.Ordinal);
        Assert.DoesNotContain(list.Skipped, skipped => skipped.Text.Contains("Nobody", StringComparison.Ordinal));
    }

    [Fact]
    public void A_page_in_bytes_and_a_pasted_page_read_alike()
    {
        var (bytes, text) = (SourceText.OfBytes("page.html", Encoding.UTF8.GetBytes(Rounds)), SourceText.OfText("page", Rounds));
        Assert.Equal(text.Text, bytes.Text);
        Assert.Equal(10, text.Lines.Count);
    }

    [Theory]
    [InlineData("<table><tr><td>a<td>b<tr><td>c<td>d</table>", "a\tb\nc\td")]
    [InlineData("<table><tr><td rowspan=2>a<td>b<tr><td>c</table>", "a\tb\n\tc")]
    [InlineData("<table><tr><td colspan=2>a<td>b<tr><td>c<td>d<td>e</table>", "a\t\tb\nc\td\te")]
    [InlineData("<table><tr><td>a<td rowspan=2 colspan=2>b<td>c<tr><td>d<td>e</table>", "a\tb\t\tc\nd\t\t\te")]
    [InlineData("<table><tr><td rowspan=3>a<td rowspan=2>b<td>c<tr><td>d<tr><td>e<td>f</table>", "a\tb\tc\n\t\td\n\te\tf")]
    [InlineData("<table><tr><td>a<br>b<td>c&amp;d&nbsp;e<td>f<b>g</b> <p>h</p></table>", "a b\tc&d e\tfg h")]
    [InlineData("<table><tr><td><table><tr><td>a<td>b</table><td>layout</table>", "a\tb")]
    [InlineData("<meta charset='utf-8'><html><body>\n<!--StartFragment--><table><tbody><tr><td>a</td><td>b</td></tr></tbody></table><!--EndFragment-->", "a\tb")]
    [InlineData("<table><tr><td>a<textarea>x</textarea><style>y</style><script>\"<td>z\"</script><td>b</table>", "a\tb")]
    [InlineData("<table><tr><td>a \"b\"<td>c</table>", "\"a \"\"b\"\"\"\tc")]
    public void Cells_stand_where_the_page_shows_them(string html, string text) => Assert.Equal(text, SourceText.OfText("page", html).Text);

    [Fact]
    public void Events_of_a_page_are_read_with_the_year_above_them()
    {
        var list = EventReader.Read(SourceText.OfText("page", "<h2>School year 2026/27</h2><table><tr><th>What<th>When<tr><td>Autumn break<td>12-18 October<tr><td>Exams<td>3-14 May</table>"), new EventReading());
        Assert.Empty(list.Problems);
        Assert.Equal(["2026-10-12..2026-10-18", "2027-05-03..2027-05-14"], list.Rows.Select(row => FormattableString.Invariant($"{row.From:yyyy-MM-dd}..{row.To:yyyy-MM-dd}")), StringComparer.Ordinal);
    }

    /// <summary>Pages whose tree would be far larger than their text (elements that the standard opens again in every block), or deeper than any stack.</summary>
    [Theory]
    [InlineData("<div>", 400_000, "", 0)]
    [InlineData("<b>", 400_000, "", 0)]
    [InlineData("<font size=1><i id=2>", 20_000, "<p>x", 200_000)]
    [InlineData("<table><tr><td>", 300_000, "", 0)]
    [InlineData("<table>", 600_000, "", 0)]
    [InlineData("<tr><td rowspan=65534 colspan=1000>x", 100_000, "", 0)]
    [InlineData("<td colspan=1000>", 200_000, "", 0)]
    [InlineData("<h1>x", 500_000, "<p>", 100_000)]
    [InlineData("<!--", 900_000, "", 0)]
    [InlineData("<script>", 400_000, "</style>", 100_000)]
    [InlineData("&lt", 900_000, "&#x110000;", 100_000)]
    [InlineData("<td a=1 a=2 a=3", 200_000, "", 0)]
    public void No_page_costs_more_than_its_characters(string opens, int times, string then, int more)
    {
        var page = $"<table><tr><td>Event<td>From<tr><td>Camp<td>5 Feb 2027<tr><td>{new StringBuilder().Insert(0, opens, times).Insert(opens.Length * times, then, more)}";
        Assert.InRange(page.Length, 0, SourceText.LargestFile);
        // What words and sentences take when they are first needed belongs to no page.
        SourceText.OfText("first", Rounds);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var source = SourceText.OfText("page", page);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 200L * page.Length + 20_000_000);
        Assert.True(source.Problems.Count > 0 || source.Text.Contains("Camp", StringComparison.Ordinal) || source.Text.StartsWith('<'));
    }
}
