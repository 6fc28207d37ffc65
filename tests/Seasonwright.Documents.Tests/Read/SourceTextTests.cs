using System.Text;
using Seasonwright.Core;
using Seasonwright.Documents.Read;

namespace Seasonwright.Documents.Tests.Read;

public class SourceTextTests
{
    private const string List = "Gegner;Halle\nWeiße Möwe Küstrum;Strandhalle\nVolée d’Arvenne;–\n";

    public static TheoryData<string, byte[]> Encodings => new()
    {
        { "UTF-8", Encoding.UTF8.GetBytes(List) },
        { "UTF-8 with byte order mark", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(List)] },
        { "UTF-16LE with byte order mark", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(List)] },
        { "UTF-16BE with byte order mark", [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(List)] },
        { "UTF-16LE", Encoding.Unicode.GetBytes(List) },
        { "UTF-16BE", Encoding.BigEndianUnicode.GetBytes(List) },
        { "Windows-1252", CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetBytes(List) },
    };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void The_encoding_is_found(string encoding, byte[] bytes)
    {
        var source = SourceText.OfBytes("list.csv", bytes);
        Assert.Equal((encoding, List), (source.Encoding, source.Text));
    }

    /// <summary>Read as Windows-1252 it would be "Sokó³ £êczna". No source: common practice.</summary>
    [Fact]
    public void Polish_letters_tell_their_page()
    {
        const string list = "Gospodarz;Gość\nSokół Łęczna;Żurawie Dębina\n";
        var source = SourceText.OfBytes("list.csv", CodePagesEncodingProvider.Instance.GetEncoding(1250)!.GetBytes(list));
        Assert.Equal(("windows-1250", list), (source.Encoding, source.Text));
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    [InlineData("\n")]
    public void Line_ends_are_made_one(string end) => Assert.Equal(new ValueList<string>(["a", "b"]), SourceText.OfText("list", $"a{end}b").Lines);

    [Fact]
    public void What_cannot_be_read_is_a_problem_and_gives_no_text()
    {
        Refused("empty", []);
        Refused("empty", "  \r\n "u8);
        Refused("workbook-damaged", [0x50, 0x4B, 0x03, 0x04, 0x14, 0x00, 0x06]);
        Refused("binary", "a\u0001b"u8);
        Refused("truncated", Encoding.UTF8.GetBytes(List).AsSpan()[..^2]);
        Refused("truncated", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(List)[..^1]]);
        Refused("encoding-broken", [.. Encoding.UTF8.GetBytes(List), 0xE4, .. "nderung"u8]);
        Refused("line-long", Encoding.UTF8.GetBytes(new string('a', SourceText.LongestLine + 1)));
        Refused("lines-many", Encoding.UTF8.GetBytes("a" + new string('\n', SourceText.MostLines + 1)));
        Refused("file-large", new byte[SourceText.LargestFile + 1]);
    }

    private static void Refused(string id, ReadOnlySpan<byte> bytes)
    {
        var source = SourceText.OfBytes("list.csv", bytes);
        var problem = Assert.Single(source.Problems);
        Assert.Equal((id, ""), (problem.Id, source.Text));
        Assert.NotEmpty(problem.What);
        Assert.NotEmpty(problem.Mend);
    }
}
