using Seasonwright.Core.Rules;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>What a person types against what the figure keeps; common practice, no source.</summary>
public class TypedFigureTests
{
    private static readonly Figure Share = Figure.Number("share", 0.15m, FigureUnit.Share);
    private static readonly Figure Days = Figure.Number("days", 14, FigureUnit.Days);
    private static readonly Figure Cuts = Figure.Numbers("cuts", FigureUnit.Share, 0.5m, 0.3m);
    private static readonly Figure Ids = Figure.Words("ids", "aerobic_endurance", "max_speed");

    [Theory]
    [InlineData("15", "0.15")]
    [InlineData(" 12,5 ", "0.125")]
    [InlineData("12.5", "0.125")]
    [InlineData("0", "0")]
    [InlineData("1000", "10")]
    [InlineData("1001", null)]
    [InlineData("-1", null)]
    [InlineData("15 %", "0.15")]
    [InlineData("15%", "0.15")]
    [InlineData("% 15", null)]
    [InlineData("1,000.5", null)]
    [InlineData("99999999999999999999999999999", null)]
    [InlineData("", null)]
    public void A_share_is_typed_in_per_cent(string typed, string? kept) => Assert.Equal(kept, TypedFigure.Read(Share, typed));

    [Theory]
    [InlineData("21", "21")]
    [InlineData("21.0", "21")]
    [InlineData("367", null)]
    [InlineData("three weeks", null)]
    public void Other_numbers_are_typed_as_they_are(string typed, string? kept) => Assert.Equal(kept, TypedFigure.Read(Days, typed));

    [Theory]
    [InlineData("40 20", "0.4 0.2")]
    [InlineData("40, 20", "0.4 0.2")]
    [InlineData("40;20", "0.4 0.2")]
    [InlineData("12,5 10", "0.125 0.1")]
    [InlineData("40", null)]
    [InlineData("40 20 10", null)]
    [InlineData("40 x", null)]
    public void Several_numbers_are_parted_by_blanks(string typed, string? kept) => Assert.Equal(kept, TypedFigure.Read(Cuts, typed));

    [Fact]
    public void Words_are_typed_with_blanks()
    {
        Assert.Equal("aerobic endurance, max speed", TypedFigure.Of(Ids, Ids.Default));
        Assert.Equal("max_speed", TypedFigure.Read(Ids, " max speed ,"));
        Assert.Null(TypedFigure.Read(Ids, " , "));
    }

    [Fact]
    public void Every_figure_of_the_rulebook_comes_back_as_it_is_shown() => Assert.All(
        Rulebook.All.SelectMany(rule => rule.Settings).Where(figure => figure.Default.Length > 0),
        figure => Assert.Equal(figure.Default, TypedFigure.Read(figure, TypedFigure.Of(figure, figure.Default))));

    [Fact]
    public void The_range_is_told_as_it_is_typed() => Assert.Equal(("0", "1000"), TypedFigure.Range(Share));
}
