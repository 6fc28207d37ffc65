using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

/// <summary>The finder itself must find.</summary>
public class TextGroundsTests
{
    private static readonly TextStyle Style = new(11, FontWeight.SemiBold);

    [Fact]
    public void White_on_its_phase_is_declared_and_white_on_paper_is_not()
    {
        TrackDrawing Phase(double width) => new(
            "phase", "Phase", 30,
            [new Box(new Area(0, 2, width, 25), Looks.Specific, 4), new TextRun(new(6, 18.5), "Specific prep.", Style, Looks.OnSpecific)],
            []);

        Assert.Empty(TextGrounds.Undeclared(Phase(120), Palette.Paper));
        Assert.Equal(
            "phase: 'Specific prep.' (text-on-specific) on paper",
            TextGrounds.Undeclared(Phase(60), Palette.Paper).Last());
    }

    [Fact]
    public void Later_marks_and_hollow_ones_are_no_ground()
    {
        var text = new TextRun(new(20, 20), "16", Style, Looks.Ink, TextAnchor.Middle);
        var ring = new Circle(new(20, 16), 7, Looks.MatchDay);
        var disc = new Group("home", [new Circle(new(20, 16), 14, Looks.MatchHome)]);
        Assert.Empty(TextGrounds.Undeclared(new("dates", "Dates", 40, [ring, text, disc], []), Palette.Paper));
        Assert.NotEmpty(TextGrounds.Undeclared(new("dates", "Dates", 40, [disc, ring, text], []), Palette.Paper));
    }
}
