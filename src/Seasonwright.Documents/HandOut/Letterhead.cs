using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut;

/// <summary>The head of everything on paper: the team and season at the left, which edition at the right, then goals.</summary>
internal static class Letterhead
{
    public static TextStyle Title { get; } = new(22, FontWeight.SemiBold);
    private static readonly TextStyle Stamp = new(11, FontWeight.SemiBold);
    private static readonly TextStyle Small = new(10);

    public static TrackDrawing Of(SharedSeason shared, double width)
    {
        var page = new PageSketch(width);
        var (season, locale, words) = (shared.Season, shared.Setup.Locale, shared.EditionWords);
        var room = TextWidths.Of(words, Stamp) + 16;
        page.Put(0, 0, width - room, shared.Name, Title, Looks.Ink);
        // A draft is told from a published version by a frame, not by a word alone.
        if (shared.Edition.IsDraft)
            page.Add(new Box(new(width - room, 4, room, 20), Looks.EventUnsure, 3));
        page.Put(width - room / 2, 8, room, words, Stamp, Looks.Ink, TextAnchor.Middle);
        page.Space(30);
        if (season.Days is { } days)
            page.Put(width, page.Y, width / 2, days.Words(locale), Small, Looks.Muted, TextAnchor.End);
        var goals = string.Join(" · ", season.Goals.Select(goal => GoalWords.Of(goal, locale)));
        page.Put(0, page.Y, width * 0.7, goals, Small, Looks.Muted);
        page.Space(20);
        return page.Track("letterhead", shared.Name);
    }
}
