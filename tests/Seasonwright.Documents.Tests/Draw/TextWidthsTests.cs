using System.Globalization;
using CsCheck;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

public class TextWidthsTests
{
    public static TheoryData<FontWeight> Weights => [.. Enum.GetValues<FontWeight>()];

    /// <summary>Exact: one letter alone meets no kerning. Digits and signs have tabular forms and are left to their own test.</summary>
    [Theory, MemberData(nameof(Weights))]
    public void A_letter_is_as_wide_as_the_font_files_own_table_says(FontWeight weight)
    {
        var table = new TrueTypeFile(FontFile.Of(weight));
        var face = FontFace.Of(weight);
        Assert.Equal(table.UnitsPerEm, face.UnitsPerEm);
        // Basic Latin to Latin Extended-A, Greek and Cyrillic: the names of European leagues.
        var letters = Enumerable.Range('A', 0x17F - 'A').Concat(Enumerable.Range(0x391, 0x3C9 - 0x391)).Concat(Enumerable.Range(0x410, 64))
            .Select(code => (char)code).Where(c => char.IsLetter(c) && table.Has(c)).ToList();
        Assert.True(letters.Count > 280, $"only {letters.Count} letters found");
        Assert.All(letters, c => Assert.Equal(table.Advance(c), face.Advance(c.ToString())));
    }

    [Theory, MemberData(nameof(Weights))]
    public void A_run_of_one_letter_is_the_sum_of_its_advances(FontWeight weight)
    {
        var table = new TrueTypeFile(FontFile.Of(weight));
        Assert.All("nHoä", c => Assert.Equal(12 * table.Advance(c), FontFace.Of(weight).Advance(new string(c, 12))));
    }

    [Theory, MemberData(nameof(Weights))]
    public void Every_digit_is_equally_wide_and_numbers_of_equal_length_line_up(FontWeight weight)
    {
        var table = new TrueTypeFile(FontFile.Of(weight));
        Assert.NotEqual(table.Advance('1'), table.Advance('0')); // else the feature would have nothing to do
        var face = FontFace.Of(weight);
        var digit = face.Advance("0");
        Gen.Int[0, 999_999].Sample(number =>
        {
            var text = number.ToString(CultureInfo.InvariantCulture);
            Assert.Equal(digit * text.Length, face.Advance(text));
        });
    }

    [Theory, MemberData(nameof(Weights))]
    public void Kerning_draws_open_pairs_together(FontWeight weight)
    {
        var face = FontFace.Of(weight);
        Assert.All(["AV", "To", "LT", "Ty"], pair =>
            Assert.True(face.Advance(pair) < face.Advance(pair[..1]) + face.Advance(pair[1..]), pair));
    }

    [Theory]
    [InlineData("Jänner", "Ja\u0308nner")]
    [InlineData("Ålesund", "A\u030Alesund")]
    [InlineData("Łódź", "Ło\u0301dz\u0301")]
    public void A_letter_and_its_accent_are_one_however_they_were_typed(string composed, string apart)
    {
        var style = new TextStyle(12);
        Assert.NotEqual(composed, apart, StringComparer.Ordinal);
        Assert.Equal(TextWidths.Of(composed, style), TextWidths.Of(apart, style));
        Assert.Equal(TextWidths.Of("Janner", style), TextWidths.Of("Jänner", style));
    }

    [Fact]
    public void Width_scales_with_the_size()
    {
        Gen.Select(Gen.Double[4, 40], Gen.Char.AlphaNumeric.Array[0, 30].Select(c => new string(c))).Sample((size, text) =>
        {
            var style = new TextStyle(size);
            var ten = TextWidths.Of(text, new TextStyle(10));
            // One rounding of a double on each side.
            Assert.Equal(ten * style.Size / 10, TextWidths.Of(text, style), 1e-9);
        });
    }

    [Fact]
    public void A_character_no_one_knows_is_charged_generously()
    {
        Assert.Equal(10 * FontFace.MissingGlyphEm, TextWidths.Of("\u6e2f", new TextStyle(10)), 0.01);
        Assert.Equal(0, TextWidths.Of("", new TextStyle(10)));
    }

    [Fact]
    public void Many_at_once_measure_as_one_alone_does_also_when_the_memory_overflows()
    {
        var face = FontFace.Of(FontWeight.Medium);
        var digit = face.Advance("0");
        var wide = face.Advance("Woche") - face.Advance("e") + face.Advance("e");
        Parallel.For(0, 45_000, number =>
        {
            var text = number.ToString(CultureInfo.InvariantCulture);
            Assert.Equal(digit * text.Length, face.Advance(text));
            Assert.Equal(wide, face.Advance("Woche"));
        });
    }

    [Fact]
    public void The_licence_travels_with_the_font()
    {
        using var reader = new StreamReader(FontFile.OpenLicence());
        Assert.Contains("SIL OPEN FONT LICENSE Version 1.1", reader.ReadToEnd(), StringComparison.Ordinal);
    }
}
