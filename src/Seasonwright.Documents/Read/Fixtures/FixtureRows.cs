using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Makes the rows of drafts whose questions have been asked.</summary>
internal static class FixtureRows
{
    public static ValueList<FixtureRow> Of(List<FixtureDraft> drafts)
    {
        var used = new Dictionary<string, int>(StringComparer.Ordinal);
        return drafts.Select(draft =>
        {
            var key = draft.SourceId ?? draft.Subject;
            var times = used[key] = used.GetValueOrDefault(key) + 1;
            return Row(draft, times == 1 ? key : FormattableString.Invariant($"{key}|{times}"));
        }).ToValueList();
    }

    private static FixtureRow Row(FixtureDraft draft, string key) => new(
        draft.Line, draft.Day, draft.LastDay, draft.KickOff, draft.Opponent, draft.Club ?? draft.Opponent, draft.Venue, draft.Competition, draft.Round, draft.Status,
        draft.Result?.ToString(), draft.Place, draft.Status == MatchStatus.Conditional ? draft.Condition ?? draft.Opponent : null, SeriesOf(draft),
        Remarks(draft.Listed), draft.SourceId, key, draft.Ask.Distinct(StringComparer.Ordinal).ToValueList());

    // "Best of 3 – match 1"
    private static Series? SeriesOf(FixtureDraft draft)
    {
        if (draft.Round is not { } round) return null;
        var tokens = Token.Cut(round.Length > DateText.LongestText ? round[..DateText.LongestText] : round);
        var numbers = tokens.Where(token => token is { IsNumber: true, Text.Length: 1 }).Select(token => token.Number).ToList();
        var isSeries = round.Contains("best of", StringComparison.OrdinalIgnoreCase) || round.StartsWith("bo", StringComparison.OrdinalIgnoreCase) && numbers.Count == 2;
        return isSeries && numbers is [3 or 5 or 7 or 9, >= 1] && numbers[1] <= numbers[0] ? new Series(draft.Competition ?? round, numbers[1], numbers[0]) : null;
    }

    // Without health details, which FixtureReader tells of.
    private static string? Remarks(ListedMatch listed) => string.Join("; ", listed.Beside.Where(text => !HealthWords.In(text))) is { Length: > 0 } remarks ? remarks : null;
}
