using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Rows without a date below one that has one: written once for all of them, or not known yet.</summary>
/// <param name="Ask">Id of the open question which of the two it is.</param>
/// <param name="Lines">The rows of ours that wait for it.</param>
internal sealed record BlankDates(string? Ask, IReadOnlySet<int> Lines)
{
    private static readonly BlankDates None = new(null, new HashSet<int>());

    /// <summary>Asks once for the whole list, and fills in the date above where that is answered or offered.</summary>
    /// <param name="written">The dates of the matches, null where a row has none; filled in here.</param>
    public static BlankDates Fill(List<WrittenDate?> written, ListLayout layout, List<Sides> sides, TeamChoice team, Asker asker)
    {
        var matches = layout.Matches;
        // A list that repeats its dates writes each of them: a blank is a date not known.
        if (matches.Zip(matches.Skip(1)).Any(pair => pair.First.Date.Length > 0 && Spelling.Same(pair.First.Date, pair.Second.Date))) return None;
        var above = Above(matches, written);
        var arePairs = sides.Any(side => side.AreBoth);
        // One team's own list rarely has two matches a day: a row without a time, where others have one, says nothing of its day.
        var haveClocks = !arePairs && matches.Any(match => match.Date.Length > 0 && HasClock(match));
        var blank = Enumerable.Range(0, matches.Count).Where(i => above[i] is { } row && row != i && MayBeAsAbove(matches[i], written[row]!) && (!haveClocks || HasClock(matches[i]))).ToList();
        var ours = blank.Where(i => arePairs ? team.IsOurs(sides[i].Home ?? "") || team.IsOurs(sides[i].Away ?? "") : team.IsOurSide(matches[i].Team)).ToList();
        if (ours.Count == 0) return None;
        var isSure = arePairs && blank.GroupBy(i => above[i]!.Value).All(day => PlayOnce(day.Append(day.Key).Select(i => sides[i])));
        var asked = asker.Ask("blank-dates", string.Join(' ', layout.Headings.Select(column => Spelling.Fold(column.Heading))), ours.Select(i => matches[i].Line),
            [Asker.Option("blank-dates", "as-above"), Asker.Option("blank-dates", "unknown")], [ours.Count], isSure ? "as-above" : null);
        if ((asked.Answer ?? (isSure ? "as-above" : "")) == "as-above")
            foreach (var i in blank) written[i] = written[above[i]!.Value];
        return asked.IsOpen ? new(asked.Id, ours.Select(i => matches[i].Line).ToHashSet()) : None;
    }

    // The row whose own date stands over each row; a cell that says something else, and a new heading, end it.
    private static List<int?> Above(List<ListedMatch> matches, List<WrittenDate?> written)
    {
        var above = new List<int?>();
        for (var i = 0; i < matches.Count; i++)
            above.Add(matches[i].Date.Length > 0 ? written[i] is null ? null : i : i > 0 && written[i] is null && matches[i].Section == matches[i - 1].Section ? above[i - 1] : null);
        return above;
    }

    private static bool MayBeAsAbove(ListedMatch match, WrittenDate date) => match.ByeOf.Length == 0
        && (CalendarWords.Weekday(match.Weekday) is not { } weekday || (date.First.Weekday ?? weekday) == weekday)
        && !new[] { match.Status, match.KickOff, match.Result, match.Remarks, match.Round }.Any(text => ListWords.IsPostponed(text) || ListWords.IsCancelled(text) || ListWords.IsCondition(text));

    private static bool HasClock(ListedMatch match) => TimeText.Read(match.KickOff).Time is not null;

    // On one day no team plays twice.
    private static bool PlayOnce(IEnumerable<Sides> day)
    {
        var names = day.SelectMany(side => new[] { side.Home, side.Away }).OfType<string>().Select(Spelling.Fold).ToList();
        return names.Count == names.Distinct(StringComparer.Ordinal).Count();
    }
}
