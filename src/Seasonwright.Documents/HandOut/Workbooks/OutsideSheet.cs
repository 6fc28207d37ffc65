using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>What the season keeps although none of its weeks holds it: nothing is dropped without a word.</summary>
internal static class OutsideSheet
{
    private sealed record Row(string Kind, DaySpan? Days, string Words);

    public static Sheet? Of(Season season, Setup setup, WorkbookChoices choices, SheetLooks looks)
    {
        var words = new YearWords(season, setup);
        var outside = season.Outside;
        List<Row> rows =
        [
            .. outside.Weeks.Select(week => new Row(Say("workbook.week"), week.Days, Plan(season, setup, choices, words, week))),
            .. outside.Matches.Concat(outside.Undated).Select(match => new Row(Say("workbook.match"), match.Days, words.Match(match, null))),
            .. outside.Events.Select(item => new Row(Say("workbook.event"), item.Days, words.Event(item))),
            .. outside.TestDays.Select(test => new Row(Say("workbook.tests"), DaySpan.Of(test.Day), test.Battery)),
            .. outside.Sessions.Select(session => new Row(Say("workbook.session"), DaySpan.Of(session.Day), SessionWords.Name(session))),
            .. choices.Notes ? outside.Notes.Select(note => new Row(Say("workbook.note"), note.Days, note.Text)) : [],
        ];
        return rows.Count == 0 ? null : new ListSheet<Row>("Outside", rows)
            .Text(Say("workbook.what"), 12, row => row.Kind)
            .Day(Say("workbook.first"), looks.LongDay, row => row.Days?.First)
            .Day(Say("workbook.last"), looks.LongDay, row => row.Days?.Last)
            .Text(Say("workbook.holds"), 90, row => row.Words)
            .Sheet(Say("workbook.outside.about"));
    }

    private static string Plan(Season season, Setup setup, WorkbookChoices choices, YearWords words, SeasonWeek week)
    {
        string?[] parts =
        [
            season.Facts.FindValue(SeasonFacets.WeekPhase, week.Id) is { } phase && season.Facts.Find(SeasonFacets.Phase, phase) is { } named ? RunWords.Of(named) : null,
            season.Facts.FindValue(SeasonFacets.WeekBlock, week.Id) is { } block && season.Facts.Find(SeasonFacets.Block, block) is { } of ? RunWords.Of(of) : null,
            season.KindOf(week.Id) is { } kind ? Sentences.Say($"kind.{kind}") : null,
            season.TargetOf(week.Id) is { } target ? YearTexts.Say("percent", target.PercentOf(setup.ReferenceWeek).Value) : null,
            season.PracticesOf(week.Id) is { } practices ? words.Practices(practices) : null,
            .. setup.Qualities.Where(quality => season.EmphasisOf(week.Id, quality.Id) != Emphasis.None)
                .Select(quality => YearTexts.Say("emphasis.week", quality.Name, Sentences.Say($"emphasis.{season.EmphasisOf(week.Id, quality.Id)}"))),
            .. season.Tracks.Where(track => track.Grain == TrackGrain.Week && season.CellOf(track.Id, CellPlace.Of(week.Id)) is not null)
                .Select(track => YearTexts.Say("own.day", track.Name, season.CellOf(track.Id, CellPlace.Of(week.Id)))),
            choices.Notes ? season.NoteOf(week.Id) : null,
        ];
        return YearWords.Join(parts.OfType<string>());
    }
}
