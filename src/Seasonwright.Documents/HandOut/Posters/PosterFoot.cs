using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Posters;

/// <summary>What must be said beneath the year: what dashes mean, what is left out, that a plan is no medical advice.</summary>
internal static class PosterFoot
{
    private static readonly TextStyle Style = new(9);

    public static TrackDrawing Of(Season season, ValueList<string> leftOut, double width)
    {
        var page = new PageSketch(width);
        page.Space(6);
        List<string> sentences = [];
        if (season.Matches.Any(match => match.Status is MatchStatus.Provisional or MatchStatus.Conditional or MatchStatus.Window) || season.Events.Any(e => e.Provisional))
            sentences.Add(Say("poster.unsure"));
        if (leftOut.Count > 0)
            sentences.Add(Say("poster.left-out", string.Join(", ", leftOut)));
        sentences.Add(Say("paper.caution"));
        page.Paragraph(string.Join(" ", sentences), Style, Looks.Muted);
        return page.Track("foot", Say("poster.foot"));
    }
}
