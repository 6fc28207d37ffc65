using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut.HeadCoach;

/// <summary>A week's feel as bars that rise: one easy, two normal, three hard; a ring for matches only. The word always stands beside it.</summary>
internal static class FeelMark
{
    public const double Width = 16;

    private const double Height = 9, BarWidth = 4;

    public static IEnumerable<Shape> Of(WeekFeel feel, Point at)
    {
        if (feel == WeekFeel.MatchOnly)
            return [new Circle(new(at.X + Width / 2, at.Y + Height / 2), 3.6, Looks.MatchAway)];
        var bars = feel switch { WeekFeel.Easy => 1, WeekFeel.Normal => 2, _ => 3 };
        return Enumerable.Range(0, 3).Select(bar =>
        {
            var height = Height * (bar + 1) / 3;
            return new Box(new(at.X + bar * (BarWidth + 2), at.Y + Height - height, BarWidth, height), bar < bars ? Looks.LoadDone : Looks.LoadPlanned);
        });
    }
}
