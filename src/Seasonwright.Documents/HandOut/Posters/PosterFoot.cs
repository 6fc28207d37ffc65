using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Posters;

/// <summary>What must be said beneath the year: the key to its signs, what dashes mean, what is left out, that a plan is no medical advice.</summary>
internal static class PosterFoot
{
    private static readonly TextStyle Style = new(9);

    /// <summary>px from a sign to its words, and from there to the next sign.</summary>
    private const double Gap = 4, Apart = 16;

    public static TrackDrawing Of(Season season, ValueList<TrackDrawing> year, ValueList<string> leftOut, double width)
    {
        var page = new PageSketch(width);
        page.Space(6);
        Keys(page, PosterKey.Of(season, year));
        List<string> sentences = [];
        if (PosterKey.HasDashes(year))
            sentences.Add(Say("poster.unsure"));
        if (leftOut.Count > 0)
            sentences.Add(Say("poster.left-out", string.Join(", ", leftOut)));
        sentences.Add(Say("paper.caution"));
        page.Paragraph(string.Join(" ", sentences), Style, Looks.Muted);
        return page.Track("foot", Say("poster.foot"));
    }

    /// <summary>Signs with their words on one line, or on as many as they need.</summary>
    private static void Keys(PageSketch page, IReadOnlyList<KeyEntry> entries)
    {
        var x = 0.0;
        foreach (var entry in entries)
        {
            var words = TextWidths.Of(entry.Words, Style);
            if (x > 0 && x + entry.Width + Gap + words > page.Width)
            {
                page.Space(KeyHeight);
                x = 0;
            }
            foreach (var sign in entry.Signs)
            {
                page.Add(sign.Draw(new Point(x + sign.Width / 2, page.Y + KeyHeight / 2 - 1)));
                x += sign.Width;
            }
            page.Put(x + Gap, page.Y + 1.2, page.Width, entry.Words, Style, Looks.Muted);
            x += Gap + words + Apart;
        }
        if (entries.Count > 0)
            page.Space(KeyHeight + 2);
    }

    private const double KeyHeight = 14;
}
