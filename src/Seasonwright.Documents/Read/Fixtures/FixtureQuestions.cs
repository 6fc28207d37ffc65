using System.Globalization;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Names;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Asks what our rows leave open, and puts in what has been answered. Kinds come in a fixed order.</summary>
internal static class FixtureQuestions
{
    /// <summary>Dates further than this from the middle of the list are likelier typing errors.</summary>
    private const int FarDays = 400;

    /// <param name="ofAll">Ids of open questions that every row waits for.</param>
    public static void Ask(List<FixtureDraft> drafts, ListDates dates, List<string> ofAll, DateOnly? today, Asker asker, List<Skipped> skipped)
    {
        foreach (var draft in drafts)
        {
            draft.Ask.AddRange(ofAll);
            if (draft.Date?.Ask is { } date) draft.Ask.Add(date);
            if (dates.Blanks.Ask is { } blank && dates.Blanks.Lines.Contains(draft.Line)) draft.Ask.Add(blank);
        }
        AskTogether(drafts, "formula", draft => Formula.Is(draft.Written), ["as-written", "unknown"], (draft, answer) => draft.Opponent = Formula.IsError(draft.Written) || answer == "unknown" ? null : draft.Written, asker);
        AskTogether(drafts, "signs", draft => draft.Time.Signed || Formula.Unsigned(draft.Written) is not null, ["yes", "no"], TakeSigns, asker, "yes");
        Venues(drafts, asker);
        KickOffsOrResults(drafts, today, asker);
        AskTogether(drafts, "zero-hour", draft => draft.Time.Sense == TimeSense.Midnight, ["unknown", "midnight"], (draft, answer) => draft.KickOff = answer == "midnight" ? draft.Time.Time : null, asker, "unknown");
        foreach (var draft in drafts) KickOff(draft, asker);
        foreach (var draft in drafts) Date(draft, drafts, dates, asker);
        Weeks(drafts, asker);
        AskTogether(drafts, "playoff", draft => draft.Opponent is { } name && ListWords.IsPlace(name) && (draft.Condition is null || ListWords.IsIfNeeded(draft.Condition)) && draft.Status is not (MatchStatus.Cancelled or MatchStatus.Postponed),
            ["conditional", "confirmed"], (draft, answer) => draft.Status = answer != "confirmed" || draft.Condition is not null ? MatchStatus.Conditional : draft.Status, asker);
        AskTogether(drafts, "unplayed", draft => draft.Status is MatchStatus.Confirmed or MatchStatus.Window && draft.Texts.Any(ListWords.IsUnplayed), ["match-day", "no-match"],
            (draft, answer) => draft.Status = answer switch { "match-day" => draft.Status, "no-match" => MatchStatus.Cancelled, _ => MatchStatus.Provisional }, asker);
        ScoreOrder(drafts, asker);
        Spellings(drafts, asker);
        Postponements.Ask(drafts, dates, asker, skipped);
        Repeats(drafts, asker, skipped);
    }

    // One question for all rows of a kind.
    private static void AskTogether(List<FixtureDraft> drafts, string kind, Func<FixtureDraft, bool> concerns, string[] options, Action<FixtureDraft, string?> take, Asker asker, string? offered = null)
    {
        var concerned = drafts.Where(concerns).ToList();
        if (concerned.Count == 0) return;
        var asked = asker.Ask(kind, "", concerned.Select(draft => draft.Line), options.Select(option => Asker.Option(kind, option)), [Cells(concerned.Select(draft => draft.Written)), concerned.Count], offered);
        foreach (var draft in concerned)
        {
            take(draft, asked.Answer);
            if (asked.IsOpen) draft.Ask.Add(asked.Id);
        }
    }

    private static void TakeSigns(FixtureDraft draft, string? answer)
    {
        if (Formula.Unsigned(draft.Written) is { } name && !Formula.Is(draft.Written)) draft.Opponent = answer == "no" ? draft.Written : name;
        if (draft.Time.Signed && answer == "no") draft.KickOff = null;
    }

    // Marks and places of the venue columns; a mark against what the names say is asked.
    private static void Venues(List<FixtureDraft> drafts, Asker asker)
    {
        foreach (var draft in drafts)
        {
            foreach (var (mark, place) in draft.Listed.Venues.Where(cell => !FixtureDraft.IsState(cell)).Select(VenueText.Read))
            {
                draft.Place ??= place;
                if (mark is null) continue;
                if (draft.Venue is null || mark == Venue.Neutral) draft.Venue = mark;
                else if (mark != draft.Venue && draft.Venue != Venue.Neutral)
                {
                    var asked = asker.Ask("venue", draft.Subject, [draft.Line], [Asker.Option("venue", "home"), Asker.Option("venue", "away")], [draft.Line, draft.Opponent ?? "?"]);
                    draft.Venue = asked.Answer switch { "home" => Venue.Home, "away" => Venue.Away, _ => null };
                    if (asked.IsOpen) draft.Ask.Add(asked.Id);
                }
            }
        }
    }

    // What no place of the list decides. A match still to come has no score.
    private static void KickOffsOrResults(List<FixtureDraft> drafts, DateOnly? today, Asker asker)
    {
        var open = drafts.Where(draft => draft.Listed.Figures.Length > 0).ToList();
        foreach (var draft in open.Where(draft => draft.Day > today)) draft.TakeTime(draft.Listed.Figures[0].Text);
        open.RemoveAll(draft => draft.Day > today);
        if (open.Count == 0) return;
        var cells = open.SelectMany(draft => draft.Listed.Figures).Select(figure => figure.Text).ToList();
        // About these very figures: once a kick-off has become a score, it is another question.
        var asked = asker.Ask("figures", string.Join(' ', cells), open.Select(draft => draft.Line), [Asker.Option("figures", "kick-off"), Asker.Option("figures", "result")], [Cells(cells), open.Count]);
        foreach (var draft in open)
        {
            if (asked.IsOpen) draft.Ask.Add(asked.Id);
            else if (asked.Answer == "result" && draft.Result is null) draft.TakeResult(draft.Listed.Figures.MaxBy(figure => figure.Sum)!.Text);
            else if (asked.Answer == "kick-off" && draft.KickOff is null) draft.TakeTime(draft.Listed.Figures[0].Text);
        }
    }

    private static void KickOff(FixtureDraft draft, Asker asker)
    {
        var cell = draft.Listed.KickOff.Length > 0 ? draft.Listed.KickOff : draft.DateRest;
        switch (draft.Time.Sense)
        {
            case TimeSense.JustAfterMidnight:
                Take(draft, "midnight", cell, draft.Time.Time, asker);
                break;
            case TimeSense.Doubtful:
                draft.KickOff = null;
                Take(draft, cell.Contains('m', StringComparison.OrdinalIgnoreCase) && draft.Time.Time?.Hour < 12 ? "am" : "time", cell, draft.Time.Time, asker);
                break;
            case TimeSense.Unreadable when !ListWords.IsPostponed(cell) && !ListWords.IsCancelled(cell) && !ListWords.IsReplacement(cell) && draft.Listed.KickOff.Length > 0:
                draft.KickOff = null;
                Take(draft, "time", cell, null, asker);
                break;
        }
    }

    private static void Take(FixtureDraft draft, string kind, string cell, TimeOnly? read, Asker asker)
    {
        var options = new List<AnswerOption>();
        if (read is { } time) options.AddRange(new[] { time, time.AddHours(12) }.Take(kind == "time" ? 1 : 2).Select(t => new AnswerOption(Text(t), Text(t))));
        options.Add(Asker.Option("time", "unknown"));
        var asked = asker.Ask(kind, draft.Subject, [draft.Line], options, [draft.Line, cell], takes: answer => TimeText.Read(answer).Sense is TimeSense.Known or TimeSense.Midnight);
        if (asked.Answer is { } answer) draft.KickOff = answer == "unknown" ? null : TimeText.Read(answer).Time;
        else draft.Ask.Add(asked.Id);
    }

    private static void Date(FixtureDraft draft, List<FixtureDraft> drafts, ListDates dates, Asker asker)
    {
        var cell = draft.Listed.Date;
        var isUnreadable = draft.Date is null && cell.Length > 0 && !TimeText.IsUnknown(cell) && !ListWords.IsPostponed(cell) && !ListWords.IsCancelled(cell) || draft.Date is { IsImpossible: true } or { IsBackward: true } || DateText.FindAll(cell).Skip(1).Any();
        var days = dates.Column.Readings.Select(reading => reading.First).OfType<DateOnly>().Order().ToList();
        var isFar = !isUnreadable && draft.Day is { } day && days.Count >= 3 && Math.Abs(day.DayNumber - days[days.Count / 2].DayNumber) > FarDays;
        if (isUnreadable || isFar)
        {
            var asked = asker.Ask("date", draft.Subject, [draft.Line], [Asker.Option("date", "unknown")], [draft.Line, cell], takes: IsDay);
            (draft.Day, draft.LastDay) = (DayOf(asked.Answer), null);
            draft.Status = draft.Status is MatchStatus.Postponed or MatchStatus.Cancelled or MatchStatus.Conditional ? draft.Status : draft.Day is null ? MatchStatus.Provisional : MatchStatus.Confirmed;
            if (asked.IsOpen) draft.Ask.Add(asked.Id);
        }
        else if (draft is { Date.WeekdayDiffers: true, Day: { } read, LastDay: null } && (draft.Date.Written.First.Weekday ?? draft.Date.Written.Last?.Weekday) is { } weekday && read.DayOfWeek != weekday)
        {
            var near = Enumerable.Range(-3, 7).Select(shift => read.AddDays(shift)).First(other => other.DayOfWeek == weekday);
            var asked = asker.Ask("weekday", draft.Subject, [draft.Line], new[] { read, near }.Order().Select(other => new AnswerOption(Iso(other), other.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture))), [draft.Line, cell.Length > 0 ? cell : draft.Listed.Section, read.DayOfWeek], takes: IsDay);
            draft.Day = DayOf(asked.Answer) ?? draft.Day;
            if (asked.IsOpen) draft.Ask.Add(asked.Id);
        }
    }

    // "Week of" and "week 43": one question each, whatever number of rows it concerns.
    private static void Weeks(List<FixtureDraft> drafts, Asker asker)
    {
        var weeks = drafts.Where(draft => draft is { LastDay: not null, Date.Written.Kind: WrittenKind.WeekOf or WrittenKind.Weeks or WrittenKind.Month } && draft.Ask.All(id => id != draft.Date.Ask));
        foreach (var group in weeks.GroupBy(draft => draft.Date!.Written.Week).ToList())
        {
            var rows = group.ToList();
            var asked = asker.Ask("week", group.Key is null ? "" : $"{group.Key}", rows.Select(draft => draft.Line), [Asker.Option("week", "window", rows[0].Day, rows[0].LastDay)],
                [Cells(rows.Select(draft => draft.Listed.Date.Length > 0 ? draft.Listed.Date : draft.Listed.Section)), rows[0].Day, rows[0].LastDay],
                takes: answer => rows.Count == 1 && IsDay(answer), name: group.Key is { } week ? FormattableString.Invariant($"Q-week{week}") : null);
            foreach (var draft in rows)
            {
                if (asked.IsOpen) draft.Ask.Add(asked.Id);
                else if (DayOf(asked.Answer) is { } day) (draft.Day, draft.LastDay, draft.Status) = (day, null, draft.Status == MatchStatus.Window ? MatchStatus.Confirmed : draft.Status);
            }
        }
    }

    // In one team's own list nobody knows whose figure stands first, unless a W or L beside it tells.
    private static void ScoreOrder(List<FixtureDraft> drafts, Asker asker)
    {
        var open = drafts.Where(draft => draft.Result is { } result && result.First != result.Second && draft.Venue != Venue.Home && (!draft.Sides.AreBoth || draft.Sides.AwayFirst)).ToList();
        if (open.Count == 0) return;
        var telling = open.Where(draft => draft.Result!.Value.Won is not null).Select(draft => draft.Result!.Value is var r && r.Won == r.First > r.Second).Distinct().ToList();
        var oursFirst = telling.Count == 1 ? telling[0] : (bool?)null;
        if (oursFirst is null)
        {
            var asked = asker.Ask("score-order", "", open.Select(draft => draft.Line), [Asker.Option("score-order", "ours-first"), Asker.Option("score-order", "home-first")], [open.Count]);
            if (asked.IsOpen) foreach (var draft in open) draft.Ask.Add(asked.Id);
            oursFirst = asked.Answer != "home-first";
        }
        if (oursFirst == false) foreach (var draft in open.Where(draft => draft.Venue == Venue.Away)) draft.Result = draft.Result!.Value.Turned;
    }

    private static void Spellings(List<FixtureDraft> drafts, Asker asker)
    {
        var names = drafts.Select(draft => draft.Opponent).OfType<string>().Where(name => !Formula.Is(name) && !ListWords.IsPlace(name)).DistinctBy(Spelling.Fold, StringComparer.Ordinal).ToList();
        for (var i = 0; i < names.Count; i++)
            for (var j = i + 1; j < names.Count; j++)
            {
                if (!NameLikeness.AreAlike(names[i], names[j])) continue;
                var (one, other) = (names[i], names[j]);
                var rows = drafts.Where(draft => draft.Opponent is { } name && (Spelling.Same(name, one) || Spelling.Same(name, other))).ToList();
                var asked = asker.Ask("spelling", TeamChoice.SpellingKey(one, other), rows.Select(draft => draft.Line), [Asker.Option("spelling", "one", one), Asker.Option("spelling", "two")], [one, other]);
                foreach (var draft in rows)
                {
                    if (asked.IsOpen) draft.Ask.Add(asked.Id);
                    else if (asked.Answer == "one" && Spelling.Same(draft.Opponent!, other)) draft.Club ??= drafts.FirstOrDefault(first => first.Opponent is { } name && Spelling.Same(name, one))?.Club ?? one;
                }
            }
    }

    // One number or one kick-off against one opponent on two different rows.
    private static void Repeats(List<FixtureDraft> drafts, Asker asker, List<Skipped> skipped)
    {
        var twice = drafts.Where(draft => draft is { SourceId: not null, Status: not MatchStatus.Postponed }).GroupBy(draft => draft.SourceId!, StringComparer.Ordinal)
            .Concat(drafts.Where(draft => draft is { SourceId: null, Day: not null, Opponent: not null, Status: not MatchStatus.Postponed }).GroupBy(draft => $"{draft.Day:O} {draft.KickOff:t} {Spelling.Fold(draft.Opponent!)} {Spelling.Fold(draft.Place ?? "")}", StringComparer.Ordinal))
            .Where(rows => rows.Skip(1).Any()).Select(rows => (rows.Key, Rows: rows.ToList())).ToList();
        foreach (var (key, rows) in twice)
        {
            var asked = asker.Ask("repeat", key, rows.Select(draft => draft.Line), rows.Select(draft => Asker.Option("repeat", "line", draft.Line) with { Id = FormattableString.Invariant($"line-{draft.Line}") }).Append(Asker.Option("repeat", "all")), [key, rows.Count]);
            if (asked.IsOpen) foreach (var draft in rows) draft.Ask.Add(asked.Id);
            if (asked.IsOpen || asked.Answer == "all") continue;
            foreach (var draft in rows.Where(draft => asked.Answer != FormattableString.Invariant($"line-{draft.Line}") && drafts.Remove(draft)))
                skipped.Add(Skipped.Of(draft.Line, draft.Listed.Raw, "left-out", key));
        }
    }

    internal static bool IsDay(string answer) => DayOf(answer) is { } day && DateColumn.IsPossible(day);

    internal static DateOnly? DayOf(string? answer) => DateOnly.TryParseExact(answer, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    internal static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Text(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Cells(IEnumerable<string> cells) => string.Join(", ", cells.Distinct(StringComparer.Ordinal).Take(5).Select(cell => $"\"{cell}\""));
}
