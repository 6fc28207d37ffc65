using System.Globalization;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Postponed rows: asks whether another row is the same match at its new date, or what the new date is.</summary>
internal static class Postponements
{
    public static void Ask(List<FixtureDraft> drafts, ListDates dates, Asker asker, List<Skipped> skipped)
    {
        foreach (var old in drafts.Where(draft => draft.Status == MatchStatus.Postponed).ToList())
        {
            var pointed = old.Texts.Select(text => text == old.DateRest || text == old.Listed.KickOff ? null : DateText.Find(text)).OfType<WrittenDate>().FirstOrDefault();
            var order = dates.Column.Order ?? DayOrder.DayFirst;
            if (drafts.FirstOrDefault(other => IsNewDateOf(other, old, pointed, order)) is { } twin)
            {
                var asked = asker.Ask("same", old.Subject + "|" + Iso(old.Day), [old.Line, twin.Line], [Asker.Option("same", "one"), Asker.Option("same", "two")], [old.Line, twin.Line, old.Opponent ?? "?"], "one");
                if (asked.IsOpen)
                {
                    twin.Ask.Add(asked.Id);
                    if (twin.Day is null) old.Ask.Add(asked.Id);
                }
                else if (asked.Answer == "one" && twin.Day is not null) Drop(old, twin.Line);
                else if (asked.Answer == "one") Drop(twin, old.Line);
            }
            else if (!old.Texts.Any(ListWords.IsDatePromised)) NewDate(old, pointed, order, asker);
        }

        void Drop(FixtureDraft row, int kept)
        {
            drafts.Remove(row);
            skipped.Add(Skipped.Of(row.Line, row.Listed.Raw, "moved", kept));
        }
    }

    private static void NewDate(FixtureDraft old, WrittenDate? pointed, DayOrder order, Asker asker)
    {
        var year = pointed?.First.Year ?? old.Day?.Year;
        var told = pointed is null || year is null ? null : pointed.First.In(year.Value, order);
        if (told < old.Day && pointed!.First.Year is null) told = pointed.First.In(year!.Value + 1, order);
        var options = told is { } day ? new[] { new AnswerOption(FixtureQuestions.Iso(day), day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture)) } : [];
        var asked = asker.Ask("postponed", old.Subject, [old.Line], options.Append(Asker.Option("postponed", "keep")), [old.Line, old.Opponent ?? "?"], told is { } first ? FixtureQuestions.Iso(first) : null, FixtureQuestions.IsDay);
        if (asked.IsOpen) old.Ask.Add(asked.Id);
        else if (FixtureQuestions.DayOf(asked.Answer) is { } chosen) (old.Day, old.LastDay, old.Status) = (chosen, null, MatchStatus.Confirmed);
    }

    // The old row's remark points to its date, its own remark says so, or it is the same round again.
    private static bool IsNewDateOf(FixtureDraft other, FixtureDraft old, WrittenDate? pointed, DayOrder order)
    {
        if (other == old || other.Status is MatchStatus.Postponed or MatchStatus.Cancelled || old.Opponent is null || other.Opponent is null || !Spelling.Same(other.Opponent, old.Opponent)) return false;
        if (other.Venue is { } venue && old.Venue is { } was && venue != was && pointed is null) return false;
        if (pointed is not null && other.Day is { } day) return pointed.First.In(day.Year, order) == day && (pointed.First.Year is null || pointed.First.Year == day.Year);
        return other.Day is null || ListWords.IsReplacement(other.Listed.Remarks) || other.Round is { } round && old.Round == round && other.Competition == old.Competition;
    }

    private static string Iso(DateOnly? day) => day is { } known ? FixtureQuestions.Iso(known) : "";
}
