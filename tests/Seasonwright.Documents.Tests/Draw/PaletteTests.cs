using System.Reflection;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

public class PaletteTests
{
    public static TheoryData<Scheme> Schemes => [.. Enum.GetValues<Scheme>()];

    /// <summary>
    /// Black on white is 21:1 (WCAG 2.2, definition of contrast ratio). #767676 is the lightest grey that still passes
    /// 4.5:1 on white, #777777 fails, #949494 the lightest that passes 3:1 (widely published; from memory).
    /// </summary>
    [Fact]
    public void The_formula_is_the_published_one()
    {
        var white = Rgb.Parse("#ffffff");
        Assert.Equal(21, Contrast(Rgb.Parse("#000000"), white), 1e-9);
        Assert.True(Contrast(Rgb.Parse("#767676"), white) >= 4.5);
        Assert.True(Contrast(Rgb.Parse("#777777"), white) < 4.5);
        Assert.True(Contrast(Rgb.Parse("#949494"), white) >= 3);
        Assert.True(Contrast(Rgb.Parse("#959595"), white) < 3);
    }

    /// <summary>WCAG 2.2, 1.4.3 Contrast (Minimum): 4.5:1; our texts are small.</summary>
    [Theory, MemberData(nameof(Schemes))]
    public void Every_text_can_be_read_on_every_ground_it_may_stand_on(Scheme scheme)
    {
        var texts = Looks.All.OfType<TextLook>().ToList();
        Assert.All(texts, look => Assert.NotEmpty(look.On));
        Assert.Empty(TooFaint(texts, look => look.Fill, 4.5, scheme));
    }

    /// <summary>WCAG 2.2, 1.4.11 Non-text Contrast: 3:1.</summary>
    [Theory, MemberData(nameof(Schemes))]
    public void Every_mark_stands_out_from_every_ground_it_may_stand_on(Scheme scheme) =>
        Assert.Empty(TooFaint(Looks.All.OfType<MarkLook>(), look => look.Outline!, 3, scheme));

    [Fact]
    public void Only_grounds_and_hairlines_may_be_faint() => Assert.Equal(
        ["ground", "today-column", "cursor-column", "hairline", "load-match-ground"],
        Looks.All.Where(look => look.On.Count == 0).Select(look => look.Name),
        StringComparer.Ordinal);

    /// <summary>
    /// By lightness alone, which is what a black-and-white print and every kind of colour blindness leave. 1.12:1 is
    /// our own line (no source): two neighbouring bands then still differ, beside their labels and edges.
    /// </summary>
    [Theory, MemberData(nameof(Schemes))]
    public void Phases_differ_in_lightness(Scheme scheme)
    {
        Tint[] phases = [Palette.Transition, Palette.General, Palette.Specific, Palette.Competition, Palette.Peak];
        var alike = from one in phases
                    from other in phases
                    where string.CompareOrdinal(one.Name, other.Name) < 0
                    let contrast = Contrast(one.In(scheme), other.In(scheme))
                    where contrast < 1.12
                    select $"{one.Name} {other.Name} {contrast:F2}";
        Assert.Empty(alike);
    }

    [Fact]
    public void Grey_is_grey() => Assert.All(
        Palette.All, tint => Assert.True(tint.Grey.Red == tint.Grey.Green && tint.Grey.Green == tint.Grey.Blue, tint.Name));

    [Fact]
    public void Nothing_is_left_out_or_named_twice()
    {
        Assert.Equal(Declared<Tint>(typeof(Palette)), Palette.All);
        Assert.Equal(Declared<Look>(typeof(Looks)), Looks.All);
        Assert.Distinct(Palette.All.Select(tint => tint.Name), StringComparer.Ordinal);
        Assert.Distinct(Looks.All.Select(look => look.Name), StringComparer.Ordinal);
    }

    [Fact]
    public void The_page_and_the_file_take_their_colours_from_the_palette()
    {
        var page = Stylesheet.ForPage("/fonts/");
        Assert.All(Palette.All, tint => Assert.Contains($"--{tint.Name}:{tint.Dark};", page, StringComparison.Ordinal));
        Assert.All(FontFile.All, file => Assert.Contains($"url(\"/fonts/{file.FileName}\")", page, StringComparison.Ordinal));
        foreach (var scheme in Enum.GetValues<Scheme>())
        {
            // The file's rules are the page's, each property replaced by its value.
            var rules = page[page.IndexOf(".drawing text", StringComparison.Ordinal)..];
            foreach (var tint in Palette.All)
                rules = rules.Replace($"var(--{tint.Name})", tint.In(scheme).ToString(), StringComparison.Ordinal);
            var file = Stylesheet.ForFile(scheme);
            Assert.Equal(rules, file[file.IndexOf(".drawing text", StringComparison.Ordinal)..]);
        }
    }

    private static IEnumerable<T> Declared<T>(Type type) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Static).Select(property => property.GetValue(null)).OfType<T>();

    private static List<string> TooFaint<T>(IEnumerable<T> looks, Func<T, Tint> seen, double least, Scheme scheme) where T : Look =>
        (from look in looks
         from ground in look.On
         let contrast = Contrast(seen(look).In(scheme), ground.In(scheme))
         where contrast < least
         select $"{look.Name} on {ground.Name}: {contrast:F2}").ToList();

    /// <summary>WCAG 2.2: contrast ratio (L1 + 0.05) / (L2 + 0.05) of relative luminances.</summary>
    private static double Contrast(Rgb one, Rgb other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);

        static double Luminance(Rgb colour) =>
            0.2126 * Linear(colour.Red) + 0.7152 * Linear(colour.Green) + 0.0722 * Linear(colour.Blue);

        static double Linear(byte channel)
        {
            var c = channel / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }
    }
}
