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
        var (season, locale) = (shared.Season, shared.Setup.Locale);
        var room = page.Stamp(shared.EditionWords, shared.Edition.IsDraft, 4, Stamp);
        page.Put(0, 0, room, shared.Name, Title, Looks.Ink);
        page.Space(30);
        if (season.Days is { } days)
            page.Put(width, page.Y, width / 2, days.Words(locale), Small, Looks.Muted, TextAnchor.End);
        var goals = string.Join(" · ", season.Goals.Select(goal => GoalWords.Of(goal, locale)));
        page.Put(0, page.Y, width * 0.7, goals, Small, Looks.Muted);
        page.Space(20);
        return page.Track("letterhead", shared.Name);
    }
}
