using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Year;

/// <summary>
/// The sign of a match. Its outline says what kind it is: round, diamond when key, square on neutral ground (with a diamond in it when key); filled
/// at home, hollow away; dashed while it is unsure, then a core stands for home; smaller for a friendly; struck when called off.
/// </summary>
internal static class MatchMark
{
    private const double Reach = 4.2;

    public static IEnumerable<Shape> Of(Match match, Point centre)
    {
        var isKey = match.Importance == Importance.Key;
        var isQuiet = match.Importance == Importance.Friendly || match.IsOff;
        var isUnsure = match.Status is MatchStatus.Provisional or MatchStatus.Conditional or MatchStatus.Window;
        var isHome = match.Venue == Venue.Home;
        var reach = match.Importance == Importance.Friendly ? Reach - 0.9 : Reach;

        var outline = (isUnsure, isKey, isQuiet) switch
        {
            (true, true, _) => Looks.MatchKeyUnsure,
            (true, _, _) => Looks.MatchUnsure,
            (_, _, true) => isHome ? Looks.MatchHomeQuiet : Looks.MatchAwayQuiet,
            (_, true, _) => isHome ? Looks.MatchKeyHome : Looks.MatchKeyAway,
            _ => isHome ? Looks.MatchHome : Looks.MatchAway,
        };
        yield return Figure(match, centre, reach, outline, isKey);
        // A core: home although dashed; key although square.
        if (isKey && match.Venue == Venue.Neutral && !match.IsOff)
            yield return Polygon.Diamond(centre, reach - 1.4, Looks.MatchKeyHome);
        else if (isUnsure && isHome)
            yield return Figure(match, centre, reach - 2.4, isKey ? Looks.MatchKeyHome : Looks.MatchHome, isKey);
        if (match.Venue is null)
            yield return new Circle(centre, 0.9, isKey ? Looks.MatchKeyHome : Looks.MatchHome);
        if (match.IsOff)
            yield return new Line(new(centre.X - 6, centre.Y + 5), new(centre.X + 6, centre.Y - 5), Looks.MatchDay);
    }

    private static Shape Figure(Match match, Point centre, double reach, MarkLook look, bool isKey) => (isKey, match.Venue) switch
    {
        (_, Venue.Neutral) => new Box(new(centre.X - reach + 0.6, centre.Y - reach + 0.6, 2 * reach - 1.2, 2 * reach - 1.2), look),
        (true, _) => Polygon.Diamond(centre, reach + 1.2, look),
        _ => new Circle(centre, reach, look),
    };
}
