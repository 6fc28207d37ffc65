using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.WeekSheets;

/// <summary>
/// One week on one upright page for the wall of the gym: what the week is for, a row a day with what is fixed on it and room to
/// write, and what is known of the sessions. Notes stay the coach's.
/// </summary>
public sealed class WeekSheet
{
    private const double Margin = 30, PointsPerPx = 0.75, Gap = 10;
    private const double LeastDay = 40, MostDay = 130;

    // Seven sevenths of the room may sum to a hair more than the room.
    private const double Rounding = 0.01;

    /// <summary>Of the page's width; the rest is for the pen.</summary>
    private const double WordsShare = 0.55;

    private static readonly TextStyle Title = new(20, FontWeight.SemiBold), Heading = new(13, FontWeight.SemiBold), Body = new(12),
        Strong = new(12, FontWeight.SemiBold), Small = new(9);

    /// <summary>The caution, on two lines at most.</summary>
    private static readonly double FootHeight = 2 * PageSketch.LineHeight(Small);

    private readonly SharedSeason shared;
    private readonly SeasonWeek week;
    private readonly YearWords words;
    private readonly PageSketch page;
    private readonly double bottom;

    private WeekSheet(SharedSeason shared, SeasonWeek week, PaperSize paper)
    {
        (this.shared, this.week) = (shared, week);
        words = new YearWords(shared.Season, shared.Setup);
        page = new PageSketch((paper.Width - 2 * Margin) / PointsPerPx);
        bottom = (paper.Height - 2 * Margin) / PointsPerPx;
    }

    /// <summary>One page.</summary>
    /// <param name="week">A week of the season.</param>
    public static ValueList<SheetDrawing> Of(SharedSeason shared, SeasonWeek week, PaperSize paper)
    {
        var sheet = new WeekSheet(shared, week, paper);
        sheet.Draw();
        var title = Say("week-sheet.title", shared.Name, week.Number);
        return [new SheetDrawing(title, paper.Width, paper.Height, Margin, PointsPerPx, [sheet.page.Track("week", title)])];
    }

    private Season Season => shared.Season;

    private void Draw()
    {
        Head();
        About();
        Days();
        page.Space(8);
        foreach (var line in TextWrap.Lines(Say("paper.caution"), page.Width, Small)) page.Line(line, Small, Looks.Muted);
    }

    private void Head()
    {
        var room = page.Stamp(shared.EditionWords, shared.Edition.IsDraft, 0, Strong);
        page.Put(0, 0, room - Gap, shared.Name, Heading, Looks.Muted);
        page.Space(22);
        page.Line(Say("week-sheet.heading", week.Number, words.Days(week.Days)), Title, Looks.Ink);
        page.Space(4);
    }

    // What there is to say of the week, and no more of it than leaves each day its least height.
    private void About()
    {
        var lines = Said().SelectMany(text => TextWrap.Lines(PlainText.Clean(text), page.Width, Body)).ToList();
        var most = (int)((bottom - page.Y - 16 - FootHeight - week.Days.Length * LeastDay) / PageSketch.LineHeight(Body));
        foreach (var line in lines.Count <= most ? lines : [.. lines.Take(most - 1), Say("week-sheet.more", lines.Count - most + 1)]) page.Line(line, Body, Looks.Ink);
        page.Space(8);
    }

    private IEnumerable<string> Said()
    {
        List<string> parts = [];
        if (Season.PhaseOf(week) is { } phase) parts.Add(phase.Phase.Name ?? Sentences.Say($"phase.{phase.Phase.Kind}"));
        if (Season.BlockOf(week) is { } block)
            parts.Add(Say("week-sheet.block", block.Block.Name ?? Sentences.Say($"block.{block.Block.Kind}"), week.Number - block.First.Number + 1, block.Last.Number - block.First.Number + 1));
        if (Season.KindOf(week.Id) is { } kind) parts.Add(Say("week-sheet.kind", Sentences.Say($"kind.{kind}")));
        if (parts.Count > 0) yield return string.Join(" · ", parts);

        var load = WeekLoad.Of(Season, shared.Setup, week);
        if (load.LaidOut is { } laidOut)
            yield return Say("week-sheet.laid-out", Percent(laidOut), Percent(load.Match), Percent(load.Practice), Percent(load.Placed), load.Target is { } aim ? Say("week-sheet.aim", Percent(aim)) : "");
        else if (load.Target is { } target)
            yield return Say("week-sheet.load", Percent(target), Percent(load.Match), Percent(load.Practice), Percent(load.Ours));
        // Practices on their days stand there.
        if (!Season.SessionsIn(week).Any(session => !session.IsOurs)) yield return Say("week-sheet.practices", words.Practices(Season.PracticesOf(week.Id)));
        if (Season.PracticeWishOf(week.Id) is { } wish) yield return Say("week-sheet.wish", wish);
        var levels = from quality in shared.Setup.Qualities
                     let emphasis = Season.EmphasisOf(week.Id, quality.Id)
                     where emphasis != Emphasis.None
                     orderby emphasis descending
                     group quality.Name by emphasis into level
                     select Say($"week-sheet.emphasis.{level.Key}", string.Join(", ", level));
        foreach (var level in levels) yield return level;
        var own = from track in Season.Tracks
                  let text = Season.CellOf(track.Id, CellPlace.Of(week.Id))
                  where text is not null
                  select Own(track, text);
        var ofWeek = string.Join(" · ", own);
        if (ofWeek.Length > 0) yield return ofWeek;
    }

    private void Days()
    {
        var days = week.Days.Days().Select(day => (Day: day, Lines: LinesOf(day).SelectMany(line => TextWrap.Lines(line, page.Width * WordsShare, Body)).ToList())).ToList();
        var room = bottom - page.Y - 8 - FootHeight;
        var even = Math.Clamp(room / days.Count, LeastDay, MostDay);
        // One page whatever there is: days with more than their share say how much more.
        var most = days.Max(day => day.Lines.Count);
        while (most > 1 && days.Sum(day => Height(Math.Min(day.Lines.Count, most))) > room + Rounding) most--;
        foreach (var (day, lines) in days)
        {
            page.Rule(Looks.Rule);
            var top = page.Y + 6;
            page.Put(0, top, 110, words.ShortDay(day), Strong, Looks.Ink);
            List<string> seen = lines.Count <= most ? lines : [.. lines.Take(most - 1), Say("workbook.more", lines.Count - most + 1)];
            for (var line = 0; line < seen.Count; line++)
                page.Put(120, top + line * PageSketch.LineHeight(Body), page.Width * WordsShare, seen[line], Body, Looks.Ink);
            page.Space(Height(seen.Count));
        }
        page.Rule(Looks.Rule);

        double Height(int lines) => Math.Max(even, lines * PageSketch.LineHeight(Body) + 12);
    }

    private IEnumerable<string> LinesOf(DateOnly day)
    {
        foreach (var match in Season.MatchesIn(week).Where(match => match.Days!.Value.Contains(day))) yield return MatchLine.Whom(match);
        foreach (var line in Season.Events.Where(e => e.Days.Contains(day)).SelectMany(e => EventLine.On(e, day, week.Days))) yield return line;
        foreach (var session in Season.SessionsIn(week).Where(session => session.Day == day)) yield return PlainText.Clean(SessionLine.Of(session, Season, shared.ChangedAt(session)));
        foreach (var test in Season.TestDays.Where(test => test.Day == day)) yield return PlainText.Clean(Say("head-coach.test", test.Battery));
        foreach (var track in Season.Tracks)
            if (Season.CellOf(track.Id, CellPlace.Of(day)) is { } text) yield return Own(track, text);
    }

    private static string Own(Track track, string text) =>
        PlainText.Clean(track.Form == TrackForm.Tick ? track.Name : Say("sheet.line", track.Name, track.Unit is { } unit ? $"{text} {unit}" : text));

    private string Percent(Load? load) => load is { } known ? known.PercentOf(shared.Setup.ReferenceWeek).Value.ToString(CultureInfo.InvariantCulture) + " %" : Say("week-sheet.unknown");
}
