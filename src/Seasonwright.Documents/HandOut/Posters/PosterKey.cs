using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Posters;

/// <summary>A sign as it looks on the poster.</summary>
/// <param name="Width">px it takes.</param>
/// <param name="Draw">Its shapes around a centre.</param>
internal sealed record KeySign(double Width, Func<Point, IEnumerable<Shape>> Draw);

/// <summary>Signs that mean the same, and what.</summary>
internal sealed record KeyEntry(string Words, ValueList<KeySign> Signs)
{
    public double Width => Signs.Sum(sign => sign.Width);
}

/// <summary>
/// The key to a poster: exactly the signs that stand on it, read from what was drawn, drawn as they are there. What its track's own
/// name or hint says already is not said again.
/// </summary>
internal static class PosterKey
{
    public static IReadOnlyList<KeyEntry> Of(Season season, ValueList<TrackDrawing> year) =>
        [.. year.SelectMany(track => track.Id switch
        {
            TrackIds.Weeks => Weeks(track),
            "matches" => Matches(season, track),
            "practices" => Practices(track),
            "blocks" => Blocks(track),
            _ when track.Id.StartsWith("own-", StringComparison.Ordinal) => Own(track),
            _ => [],
        }).GroupBy(entry => entry.Words, StringComparer.Ordinal).Select(same => same.First())];

    /// <summary>Whether anything in the year has a dashed edge.</summary>
    public static bool HasDashes(ValueList<TrackDrawing> year) => year.SelectMany(Flat).Any(shape => Look(shape) is { Dash: > 0 });

    private static IEnumerable<KeyEntry> Weeks(TrackDrawing track)
    {
        if (track.Marks.OfType<Box>().Any(box => box.Look == Looks.MatchHome))
            yield return Entry("locked", 8, centre => WeekMarks.Locked(centre));
        if (track.Marks.OfType<Polyline>().Any())
            yield return Entry("ready", 8, centre => WeekMarks.Ready(centre));
    }

    private static IEnumerable<KeyEntry> Matches(Season season, TrackDrawing track)
    {
        var matches = season.AllMatches.ToDictionary(match => $"match/{match.Id}", StringComparer.Ordinal);
        var drawn = track.Marks.OfType<Group>().Where(group => group.Item is not null && matches.ContainsKey(group.Item)).ToList();
        foreach (var same in drawn.Select(group => matches[group.Item!]).GroupBy(Meaning).OrderBy(same => same.Key.Order))
        {
            // Each look once: what is unsure looks otherwise.
            var looks = same.DistinctBy(match => (match.Venue, match.Importance, match.IsOff, IsUnsure(match))).OrderBy(IsUnsure).ThenBy(match => match.Venue);
            yield return new(Say(same.Key.Text), looks.Select(match => new KeySign(13, centre => MatchMark.Of(match, centre))).ToValueList());
        }
        if (drawn.Exists(group => group.Shapes.OfType<Polyline>().Any(line => line.Look == Looks.Bracket)))
            yield return Entry("span", 14, centre =>
                [new Polyline([new(centre.X - 6, centre.Y - 1), new(centre.X - 6, centre.Y + 2), new(centre.X + 6, centre.Y + 2), new(centre.X + 6, centre.Y - 1)], Looks.Bracket)]);
        // The figure beside a sign; the code stands in the middle beneath it.
        if (drawn.SelectMany(group => group.Shapes.OfType<TextRun>()).FirstOrDefault(text => text.Anchor == TextAnchor.Start && text.Look == Looks.Muted) is { } since)
            yield return Text("since", since);
    }

    private static (int Order, string Text) Meaning(Match match) => match switch
    {
        { IsOff: true } => (6, "poster.key.off"),
        { Importance: Importance.Key } => (4, "poster.key.key"),
        { Importance: Importance.Friendly } => (5, "poster.key.friendly"),
        { Venue: Venue.Home } => (0, "poster.key.home"),
        { Venue: Venue.Away } => (1, "poster.key.away"),
        { Venue: Venue.Neutral } => (2, "poster.key.neutral"),
        _ => (3, "poster.key.unknown"),
    };

    private static bool IsUnsure(Match match) => match.Status is MatchStatus.Provisional or MatchStatus.Conditional or MatchStatus.Window;

    private static IEnumerable<KeyEntry> Practices(TrackDrawing track)
    {
        if (track.Marks.OfType<Circle>().FirstOrDefault() is { } dot)
            yield return Entry("practices", 4, centre => [dot with { Centre = centre }]);
    }

    private static IEnumerable<KeyEntry> Blocks(TrackDrawing track)
    {
        var places = track.Marks.OfType<TextRun>().Where(text => text.Anchor == TextAnchor.Middle).ToList();
        if (places.Find(text => text.Style.Weight == FontWeight.SemiBold) is { } hardest)
            yield return Text("hardest", hardest);
        if (places.Find(text => text.Look == Looks.Muted) is { } closing)
            yield return Text("closing", closing);
    }

    private static IEnumerable<KeyEntry> Own(TrackDrawing track)
    {
        if (track.Marks.OfType<Polyline>().FirstOrDefault() is { } tick)
        {
            var (x, y) = (tick.Points[0].X + 4, tick.Points[0].Y);
            yield return Entry("tick", 10, centre => [tick with { Points = tick.Points.Select(at => new Point(centre.X + at.X - x, centre.Y + at.Y - y)).ToValueList() }]);
        }
        if (track.Marks.OfType<Line>().Any(line => line.From.X == line.To.X))
            yield return Entry("stroke", 4, centre => [new Line(new(centre.X, centre.Y - 4), new(centre.X, centre.Y + 4), Looks.MatchDay)]);
        if (track.Marks.OfType<Circle>().FirstOrDefault() is { } spot)
            yield return Entry("spot", 5, centre => [spot with { Centre = centre }]);
    }

    private static KeyEntry Entry(string id, double width, Func<Point, IEnumerable<Shape>> draw) => new(Say("poster.key." + id), [new(width, draw)]);

    private static KeyEntry Text(string id, TextRun text) =>
        Entry(id, text.Width, centre => [text with { At = new(centre.X, centre.Y + 3.2), Anchor = TextAnchor.Middle }]);

    private static IEnumerable<Shape> Flat(TrackDrawing track) => track.Marks.SelectMany(shape => shape is Group group ? group.Shapes.AsEnumerable() : [shape]);

    private static MarkLook? Look(Shape shape) => shape switch
    {
        Box box => box.Look,
        Circle circle => circle.Look,
        Polygon polygon => polygon.Look,
        _ => null,
    };
}
