using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>Asks what the events of a list leave open, row by row, and puts in what has been answered.</summary>
internal static class EventQuestions
{
    public static void Ask(List<EventDraft> drafts, EventReading options, DayOrder? order, Asker asker, List<Skipped> skipped)
    {
        foreach (var draft in drafts.ToList())
        {
            if (LeavesOut(Days(draft, options, order, asker)) || LeavesOut(Outside(draft, options, asker)))
            {
                drafts.Remove(draft);
                skipped.Add(Skipped.Of(draft.Line.Line, draft.Line.Raw, "event-left-out"));
                continue;
            }
            if (draft.Title.Length == 0 || Formula.Is(draft.Title)) Title(draft, asker);
            var place = drafts.IndexOf(draft) + 1;
            foreach (var remark in draft.Notes.ToList())
                if (Take(draft, remark, asker) is { } second) drafts.Insert(place++, second);
            Share(draft, asker);
            if (Remark.IsLimit(draft.Title)) Training(draft, draft.Title, asker);
            if (draft.For is { } whom && Remark.IsSomePeople(whom)) Who(draft, whom, asker);
        }
    }

    private static bool LeavesOut(string? answer) => answer == "leave-out";

    private static string? Days(EventDraft draft, EventReading options, DayOrder? order, Asker asker)
    {
        var read = draft.Read;
        // What the whole list is asked is asked once.
        if (read.Doubt == SpanDoubt.None || draft.Ask.Count > 0) return null;
        var (kind, name) = read.Doubt switch
        {
            SpanDoubt.Backward => ("backward", "Q-backward"),
            SpanDoubt.Weekday => ("other-weekday", "Q-weekday"),
            SpanDoubt.OpenEnd or SpanDoubt.OpenStart => ("open", "Q-open"),
            SpanDoubt.WholeMonth => ("month", "Q-month"),
            SpanDoubt.WeekNumber => ("week-number", "Q-week"),
            _ => ("days", "Q-days"),
        };
        var choices = read.Choices.Concat(Bounded(read, options.Season)).ToList();
        var asked = asker.Ask(kind, draft.Subject, [draft.Line.Line], choices.Select(Choice).Append(Asker.Option("days", "leave-out")), [draft.Title, draft.Line.When], null, answer => Free(answer) is not null, name);
        if (asked.IsOpen)
        {
            draft.Ask.Add(asked.Id);
            if (read.Doubt is SpanDoubt.WholeMonth or SpanDoubt.WeekNumber) draft.State = RowState.Provisional;
        }
        else if (choices.Where(days => $"{days}" == asked.Answer).Select(days => (DaySpan?)days).FirstOrDefault() is { } chosen) draft.Take(SpanReading.Clear(chosen.First, chosen.Last) with { Part = read.Part });
        else if (Free(asked.Answer!) is { } days) draft.Take(days);
        return asked.Answer;

        SpanReading? Free(string answer) => DaySpanText.Read(answer, options.Season ?? (read.From is { } day ? new DaySpan(day.AddDays(-180), day.AddDays(180)) : null), order) is { Days: not null } free ? free : null;
    }

    // An open end may be the season's.
    private static IEnumerable<DaySpan> Bounded(SpanReading read, DaySpan? season)
    {
        if (season is not { } days) yield break;
        if (read.Doubt == SpanDoubt.OpenEnd && read.From is { } from && from <= days.Last) yield return new DaySpan(from, days.Last);
        if (read.Doubt == SpanDoubt.OpenStart && read.To is { } to && to >= days.First) yield return new DaySpan(days.First, to);
    }

    private static AnswerOption Choice(DaySpan days) => new($"{days}", days.Length == 1 ? Sentences.Say("days.one", days.First) : Sentences.Say("days.span", days.First, days.Last));

    private static string? Outside(EventDraft draft, EventReading options, Asker asker)
    {
        if (draft.State == RowState.Waiting || draft.Read.Whole is not { } days || options.Season is not { } season || season.Overlaps(days)) return null;
        var asked = asker.Ask("outside", draft.Subject, [draft.Line.Line], [Asker.Option("outside", "keep"), Asker.Option("days", "leave-out")], [draft.Title, days.First, days.Last, season.First, season.Last], "keep");
        if (asked.IsOpen) draft.Ask.Add(asked.Id);
        return asked.Answer;
    }

    private static void Title(EventDraft draft, Asker asker)
    {
        var asked = asker.Ask("title", draft.Subject, [draft.Line.Line], [], [draft.Line.Line, draft.Line.When, draft.Title], takes: answer => answer.Trim().Length > 0 && !Formula.Is(answer));
        if (asked.Answer is { } title) draft.Title = title.Trim();
        else
        {
            draft.Ask.Add(asked.Id);
            draft.State = RowState.Waiting;
        }
    }

    /// <summary>Puts a remark where it belongs; gives the second event that the answer made of it.</summary>
    private static EventDraft? Take(EventDraft draft, string remark, Asker asker)
    {
        if (Remark.IsUnsure(remark) && draft.State == RowState.Certain) draft.State = RowState.Provisional;
        if (draft.Part is null && PartText.Alone(remark) is { } part)
        {
            draft.Part = part;
            draft.Notes.Remove(remark);
        }
        else if (Remark.ShareOf(remark) is { } share) draft.Training ??= share;
        else if (Remark.IsLimit(remark)) Training(draft, remark, asker);
        else if (draft.For is null && Remark.IsWhom(remark))
        {
            draft.For = remark;
            draft.Notes.Remove(remark);
        }
        else if (Remark.Hidden(remark, draft) is { } hidden) return hidden.IsException ? Except(draft, remark, hidden, asker) : Second(draft, remark, hidden, asker);
        return null;
    }

    private static void Training(EventDraft draft, string words, Asker asker)
    {
        if (draft.Line.IsTest || draft.Training is not null || draft.IsTrainingAsked) return;
        draft.IsTrainingAsked = true;
        var options = new List<AnswerOption> { Asker.Option("training", "none"), Asker.Option("training", "usual") };
        if (draft.Part is null && Remark.Taken(words) is { } part) options.Insert(0, Asker.Option("training", "part", part));
        var asked = asker.Ask("training", $"{draft.Subject}|{Spelling.Fold(words)}", [draft.Line.Line], options, [draft.Title, words], takes: answer => Remark.Percent(answer) is not null);
        if (asked.IsOpen) draft.Ask.Add(asked.Id);
        else if (asked.Answer == "part") draft.Part = Remark.Taken(words);
        else draft.Training = asked.Answer switch { "none" => new Percent(0), "usual" => new Percent(100), { } share => Remark.Percent(share), null => null };
    }

    private static EventDraft? Second(EventDraft draft, string remark, HiddenEvent hidden, Asker asker)
    {
        var days = hidden.Read.Days!.Value;
        var asked = asker.Ask("remark", $"{draft.Subject}|{Spelling.Fold(remark)}", [draft.Line.Line], [Asker.Option("remark", "yes"), Asker.Option("remark", "remark")], [draft.Title, remark, hidden.Title, Choice(days).Text]);
        if (asked.IsOpen) draft.Ask.Add(asked.Id);
        if (asked.Answer != "yes") return null;
        draft.Notes.Remove(remark);
        return new EventDraft(new EventLine(draft.Line.Line, draft.Line.Raw, hidden.Kind, hidden.IsTest, hidden.Title, draft.Line.Span, remark, []), hidden.Read);
    }

    // "except 1 April"
    private static EventDraft? Except(EventDraft draft, string remark, HiddenEvent hidden, Asker asker)
    {
        var without = draft.Read.Whole!.Value.Days().Where(day => !hidden.Read.Days!.Value.Contains(day)).ToValueList();
        if (without.Count == 0 || draft.Read.Only is not null || without.Count == draft.Read.Whole.Value.Length) return null;
        var asked = asker.Ask("except", $"{draft.Subject}|{Spelling.Fold(remark)}", [draft.Line.Line], [Asker.Option("except", "without"), Asker.Option("except", "whole")], [draft.Title, remark, Choice(hidden.Read.Days!.Value).Text]);
        if (asked.IsOpen) draft.Ask.Add(asked.Id);
        else if (asked.Answer == "without") draft.Take(SpanReading.Clear(without[0], without[^1]) with { Only = without, Part = draft.Read.Part });
        return null;
    }

    // A column of shares: whole per cent, 0 to 130.
    private static void Share(EventDraft draft, Asker asker)
    {
        if (draft.Line.Share is not { } cell) return;
        draft.Training = Remark.Percent(cell);
        if (draft.Training is null) Training(draft, cell, asker);
    }

    private static void Who(EventDraft draft, string whom, Asker asker)
    {
        var asked = asker.Ask("who", $"{draft.Subject}|{Spelling.Fold(whom)}", [draft.Line.Line], [], [draft.Title, whom], takes: answer => answer.Trim().Length > 0);
        if (asked.Answer is { } names) draft.For = names.Trim();
        else draft.Ask.Add(asked.Id);
    }
}
