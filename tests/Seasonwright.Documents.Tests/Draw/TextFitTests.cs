using System.Globalization;
using CsCheck;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

public class TextFitTests
{
    private static readonly Gen<TextStyle> Styles = Gen.Select(
        Gen.Double[6, 20], Gen.OneOf(Enum.GetValues<FontWeight>()), (size, weight) => new TextStyle(size, weight));

    [Fact]
    public void What_fits_is_never_wider_than_the_room_and_says_its_own_width() =>
        Gen.Select(Texts.Any, Gen.Double[-5, 200], Styles).Sample((text, room, style) =>
        {
            var fitted = TextFit.Fit(text, room, style);
            Assert.Equal(TextWidths.Of(fitted.Text, style), fitted.Width);
            if (fitted.Kind == FitKind.Nothing)
                Assert.Equal("", fitted.Text);
            else
                Assert.True(fitted.Width <= room, $"{fitted} in {room}");
        });

    [Fact]
    public void A_text_stays_whole_exactly_when_there_is_room_for_it() =>
        Gen.Select(Texts.Any.Where(text => PlainText.Clean(text).Length > 0), Styles).Sample((text, style) =>
        {
            var clean = PlainText.Clean(text);
            var needed = TextWidths.Of(clean, style);
            Assert.Equal(new FittedText(clean, needed, FitKind.Whole), TextFit.Fit(text, needed, style));
            Assert.NotEqual(FitKind.Whole, TextFit.Fit(text, needed - 0.001, style).Kind);
        });

    [Fact]
    public void A_shortened_text_is_a_beginning_cut_between_letters() =>
        Gen.Select(Texts.Any, Gen.Double[5, 150], Styles).Sample((text, room, style) =>
        {
            var fitted = TextFit.Fit(text, room, style);
            if (fitted.Kind != FitKind.Shortened)
                return;
            var clean = PlainText.Clean(text);
            var kept = fitted.Text[..^1];
            Assert.EndsWith("…", fitted.Text, StringComparison.Ordinal);
            Assert.StartsWith(kept, clean, StringComparison.Ordinal);
            Assert.Contains(kept.Length, StringInfo.ParseCombiningCharacters(clean));
        });

    /// <summary>"Longest" is asked of letters that do not kern with the ellipsis' neighbours, where it is exact.</summary>
    [Fact]
    public void Nothing_longer_would_have_fitted() =>
        Gen.Select(Gen.Char["nmhou"].Array[2, 40].Select(c => new string(c)), Gen.Double[12, 150], Styles).Sample((text, room, style) =>
        {
            var fitted = TextFit.Fit(text, room, style);
            if (fitted.Kind != FitKind.Shortened)
                return;
            var oneMore = text[..fitted.Text.Length] + "…";
            Assert.True(TextWidths.Of(oneMore, style) > room, $"{oneMore} fits in {room} as well");
        });

    [Fact]
    public void The_ladder_gives_the_longest_form_that_fits()
    {
        var style = new TextStyle(11, FontWeight.SemiBold);
        string[] forms = ["General preparation", "General prep.", "Gen.", "G"];
        Gen.Double[0, 160].Sample(room =>
        {
            var fitted = TextFit.Fit([.. forms], room, style);
            var expected = forms.FirstOrDefault(form => TextWidths.Of(form, style) <= room);
            Assert.Equal(expected ?? "", fitted.Text);
            Assert.True(fitted.Width <= Math.Max(0, room));
        });
        Assert.Equal(FitKind.Abbreviated, TextFit.Fit([.. forms], 40, style).Kind);
        Assert.Equal(FittedText.Nothing, TextFit.Fit([], 40, style));
    }

    [Fact]
    public void A_name_without_short_forms_is_cut() =>
        Assert.Equal("Wettkampf…", TextFit.Fit(["Wettkampfphase I"], 72, new TextStyle(11, FontWeight.SemiBold)).Text);
}
