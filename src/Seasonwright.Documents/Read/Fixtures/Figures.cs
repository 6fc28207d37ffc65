using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>
/// Tells kick-offs from scores where no heading does: "28:24" can be no time, "20:15" may be either, and all cells of a place decide
/// together. What stays open is left in <see cref="ListedMatch.Figures"/>, to be asked.
/// </summary>
internal static class Figures
{
    public static List<ListedMatch> Decide(List<ListedMatch> matches)
    {
        var meanings = matches.SelectMany(match => match.Figures.Select(figure => (match, figure))).GroupBy(cell => cell.figure.Place)
            .SelectMany(place => InPlace([.. place])).ToLookup(cell => cell.Match, ReferenceEqualityComparer.Instance);
        return [.. matches.Select(match => match.Figures.Length == 0 ? match : With(match, [.. meanings[match].Select(cell => (cell.Figure, cell.Meaning))]))];
    }

    // A place without any score holds kick-offs if all of them are usual ones. In a place with scores nothing from the first to the
    // last of them is a kick-off; in front of them and behind, matches still to come may have theirs there.
    private static IEnumerable<(object Match, FigureCell Figure, Meaning Meaning)> InPlace(List<(ListedMatch Match, FigureCell Figure)> cells)
    {
        var hasScores = cells.Any(IsScore);
        var first = cells.FindIndex(cell => IsScore(cell) || hasScores && !cell.Figure.IsUsualClock);
        var last = cells.FindLastIndex(cell => IsScore(cell) || hasScores && !cell.Figure.IsUsualClock);
        var areClocks = cells.TrueForAll(cell => cell.Figure.IsUsualClock);
        return cells.Select((cell, i) => ((object)cell.Match, cell.Figure, hasScores && i >= first && i <= last ? Meaning.Score : !hasScores && areClocks ? Meaning.Clock : Meaning.Open));
    }

    // A row that says elsewhere when it starts has its score between the names.
    private static bool IsScore((ListedMatch Match, FigureCell Figure) cell) =>
        !cell.Figure.MayBeClock || HasClock(cell.Match) && (cell.Figure.Place == FigurePlace.Between || !cell.Figure.IsUsualClock);

    private static bool HasClock(ListedMatch match) => TimeText.Read(match.KickOff).Time is not null;

    private static ListedMatch With(ListedMatch match, List<(FigureCell Figure, Meaning Meaning)> cells)
    {
        List<FigureCell> All(Meaning meaning) => [.. cells.Where(cell => cell.Meaning == meaning).Select(cell => cell.Figure)];
        var (clocks, scores, open) = (All(Meaning.Clock), All(Meaning.Score), All(Meaning.Open));
        // A smaller figure beside the score, at no usual time, is the score at half time.
        if (scores.MaxBy(score => score.Sum) is { } final) open.RemoveAll(figure => !figure.IsUsualClock && figure.Sum < final.Sum);
        // One of two is the kick-off: the other is the score.
        if (open.Count == 1 && scores.Count == 0 && (clocks.Count > 0 || HasClock(match))) (scores, open) = (open, []);
        var spare = HasClock(match) ? clocks : clocks.Skip(1);
        return match with
        {
            KickOff = HasClock(match) || clocks.Count == 0 ? match.KickOff : clocks[0].Text,
            Result = scores.MaxBy(score => score.Sum)?.Text ?? "",
            Remarks = string.Join("; ", spare.Select(clock => clock.Text).Prepend(match.Remarks).Where(text => text.Length > 0)),
            Figures = [.. open],
        };
    }

    private enum Meaning
    {
        Open,
        Clock,
        Score,
    }
}
