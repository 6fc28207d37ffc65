using System.Xml;
using CsCheck;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

public class PlainTextTests
{
    [Fact]
    public void Clean_text_is_what_XML_may_hold_and_stays_as_it_is() => Texts.Any.Sample(text =>
    {
        var clean = PlainText.Clean(text);
        XmlConvert.VerifyXmlChars(clean); // throws on what XML 1.0, production 2, forbids
        Assert.DoesNotContain(clean, char.IsControl);
        Assert.DoesNotContain("  ", clean, StringComparison.Ordinal);
        Assert.Equal(clean.Trim(' '), clean);
        Assert.Equal(clean, PlainText.Clean(clean));
    });

    [Theory]
    [InlineData("  Mär\u0000z \t\r\n 2027 ", "März 2027")]
    [InlineData("a\ud800b", "ab")]
    [InlineData("evil\u202etxt", "eviltxt")]
    [InlineData("18\u00a0km", "18\u00a0km")]
    [InlineData("👩‍👩‍👧 & <b>", "👩‍👩‍👧 & <b>")]
    [InlineData("\u0001", "")]
    public void Examples(string typed, string drawn) => Assert.Equal(drawn, PlainText.Clean(typed));
}
