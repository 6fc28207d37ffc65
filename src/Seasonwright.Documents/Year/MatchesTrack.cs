using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>Every match in a place of its own: its sign, whom against, the days since the last one; a bracket over the days of a window.</summary>
internal sealed class MatchesTrack
{
    private const double Top = 4;
    private const double CodeGap = 2;
    private const double LeastForCode = 26;
    private readonly YearPlan plan;
    private readonly TrackSketch sketch;
    private readonly List<Placed> placed;

    // Codes are equally long: either all have room for their three letters, or all have two.
    private readonly OpponentCodes codes;
    private readonly bool hasRoomForCodes;
    private readonly System.Collections.Immutable.ImmutableArray<DateOnly> matchDays;

    // The name explains the figures only where there was room for one.
    private bool hasFigures;

    private MatchesTrack(YearPlan plan)
    {
        this.plan = plan;
        sketch = new TrackSketch(plan, "matches", Say("track.matches"));
        matchDays = plan.Season.MatchDays;
        placed = [.. Places()];
        var full = new OpponentCodes(plan.Season.AllMatches, 3);
        var hasRoomForFull = plan.IsByDay || plan.HasWords || HaveRoom(full);
        codes = hasRoomForFull ? full : new OpponentCodes(plan.Season.AllMatches, 2);
        hasRoomForCodes = hasRoomForFull || HaveRoom(codes);
    }

    /// <summary>A match in sight, the columns it stands in, and the top of its row.</summary>
    private sealed record Placed(Match Match, DaySpan Seen, double From, double To, double Top)
    {
        public double Centre => (From + To) / 2;
    }

    public static TrackDrawing Draw(YearPlan plan) => new MatchesTrack(plan).Draw();

    // A line of words, a sign over a code, or a sign alone.
    private double RowHeight => plan.HasWords && !plan.IsByDay ? 19 : plan.IsSlim ? 14 : 27;

    private TrackDrawing Draw()
    {
        foreach (var at in placed)
        {
            var group = plan.HasWords && !plan.IsByDay ? Line(at) : Sign(at);
            sketch.Add(new Group(plan.Words.Match(at.Match, Since(at.Match)), group.ToValueList(), $"match/{at.Match.Id}"));
        }
        var bottom = placed.Select(at => at.Top).DefaultIfEmpty(Top).Max() + RowHeight;
        // Room for the name and its hint even where one match a week is the most.
        var height = Math.Max(bottom + 3, 54);
        var signs = plan.Matches.Any(match => match.Importance == Importance.Key) ? "hint.matches.key" : "hint.matches";
        sketch.Name(Top + 10, Say(hasFigures ? signs + ".since" : signs), height);
        Cells();
        return sketch.Drawing(height);
    }

    private IEnumerable<Placed> Places()
    {
        var lanes = new Lanes();
        foreach (var match in plan.Matches)
        {
            if (match.Days is not { } days || plan.Seen(days) is not { } seen)
                continue;
            var (from, to) = Place(seen);
            yield return new(match, seen, from, to, Top + lanes.Take(from, to) * RowHeight);
        }
    }

    /// <summary>Whether every code is clear of the next one in its row and of the drawing's end; it may reach over its own column.</summary>
    private bool HaveRoom(OpponentCodes codes) => placed.GroupBy(at => at.Top).All(row =>
    {
        var right = plan.Left - CodeGap;
        foreach (var at in row.OrderBy(at => at.From))
        {
            var reach = TextWidths.Of(codes.Of(at.Match), Type.Small) / 2;
            if (at.Centre - reach < right)
                return false;
            right = at.Centre + reach + CodeGap;
        }
        return right <= plan.Width;
    });

    /// <summary>The columns a match stands in: of its week, of all weeks of a window, by day of its days and what its code needs.</summary>
    private (double From, double To) Place(DaySpan seen)
    {
        var (first, last) = (plan.ColumnOf(seen.First), plan.ColumnOf(seen.Last));
        if (!plan.IsByDay)
            return (first.X, last.Right);
        var (from, to) = plan.Across(seen);
        var lacking = Math.Max(0, (LeastForCode - to + from) / 2);
        return (from - lacking, to + lacking);
    }

    private List<Shape> Sign(Placed at)
    {
        var (match, seen, from, to, top) = at;
        var centre = new Point(at.Centre, top + 6);
        var room = hasRoomForCodes && !plan.IsByDay ? double.PositiveInfinity
            : Math.Min(to - from, plan.IsByDay ? 3 * plan.DayWidth : 2 * plan.ColumnWidth);
        List<Shape> shapes = [.. MatchMark.Of(match, centre)];
        if (seen.Length > 1)
            shapes.Add(Bracket(seen, top + 13));
        if (plan.IsSlim)
            return shapes;
        var look = match.Importance == Importance.Friendly || match.IsOff ? Looks.Muted : Looks.Ink;
        var code = Ladder.Whole([.. Names(match)], room - CodeGap, Type.Small);
        if (code.Kind != FitKind.Nothing)
        {
            var baseline = top + 22.5;
            shapes.Add(new TextRun(new(centre.X, baseline), code.Text, Type.Small, look, TextAnchor.Middle));
            if (match.IsOff)
                shapes.Add(new Line(new(centre.X - code.Width / 2 - 1, baseline - 3.2), new(centre.X + code.Width / 2 + 1, baseline - 3.2), Looks.MatchDay));
        }
        if (Since(match) is { } since)
        {
            var fitted = Ladder.Whole([Number(since)], to - centre.X - 7, Type.Small);
            hasFigures |= fitted.Kind != FitKind.Nothing;
            if (fitted.Kind != FitKind.Nothing)
                shapes.Add(new TextRun(new(centre.X + 6.8, centre.Y + 3.2), fitted.Text, Type.Small, Looks.Muted));
        }
        return shapes;
    }

    private List<Shape> Line(Placed at)
    {
        var (match, seen, from, to, top) = at;
        var centre = new Point(from + 9, top + 7);
        List<Shape> shapes = [.. MatchMark.Of(match, centre)];
        if (seen.Length > 1)
            shapes.Add(Bracket(seen, top + 16));
        var right = to - 4;
        if (Since(match) is { } since && to - from >= 80)
        {
            var days = Say("match.since.short", since);
            shapes.Add(new TextRun(new(right, top + 10.6), days, Type.Small, Looks.Muted, TextAnchor.End));
            right -= TextWidths.Of(days, Type.Small) + 4;
        }
        var look = match.Importance == Importance.Friendly || match.IsOff ? Looks.Muted : Looks.Ink;
        var text = Ladder.Cut([.. LineNames(match)], right - from - 18, Type.Mark);
        if (text.Kind == FitKind.Nothing)
            return shapes;
        shapes.Add(new TextRun(new(from + 18, top + 10.6), text.Text, Type.Mark, look));
        if (match.IsOff)
            shapes.Add(new Line(new(from + 17, top + 7), new(from + 19 + text.Width, top + 7), Looks.MatchDay));
        return shapes;
    }

    private Polyline Bracket(DaySpan seen, double y)
    {
        var (from, to) = plan.Across(seen);
        if (to - from < 8)
            (from, to) = ((from + to) / 2 - 4, (from + to) / 2 + 4);
        return new([new(from + 1, y - 3), new(from + 1, y), new(to - 1, y), new(to - 1, y - 3)], Looks.Bracket);
    }

    private IEnumerable<string> Names(Match match)
    {
        var code = codes.Of(match);
        if (plan.IsByDay && match.Opponent is { } name)
            yield return name;
        yield return code;
        yield return FirstOf(code, 2);
        yield return FirstOf(code, 1);
    }

    private IEnumerable<string> LineNames(Match match)
    {
        var name = match.Opponent ?? match.Round ?? match.Competition ?? Say("match.unknown.code");
        if (match.Day is { } day && match.IsOnOneDay)
        {
            var date = Say($"day.{day.DayOfWeek}.short");
            if (match.KickOff is { } time)
                yield return $"{date} {time.ToString("HH:mm", CultureInfo.InvariantCulture)} {name}";
            yield return $"{date} {name}";
        }
        yield return name;
        yield return codes.Of(match);
    }

    private static string FirstOf(string code, int letters)
    {
        var starts = StringInfo.ParseCombiningCharacters(code);
        return starts.Length > letters ? code[..starts[letters]] : code;
    }

    private int? Since(Match match) => MatchDays.Since(match, matchDays);

    private void Cells()
    {
        foreach (var column in plan.Columns)
        {
            var matches = plan.Matches.Where(match => match.Days is { } days && days.Overlaps(column.Week.Days)).ToList();
            if (!plan.IsByDay)
            {
                sketch.Cell(column, Sentence(plan.Words.Week(column.Week), matches));
                continue;
            }
            foreach (var day in column.Week.Days.Days())
                sketch.Cell(column, day, Sentence(plan.Words.Day(day), matches.Where(match => match.Days!.Value.Contains(day))));
        }
    }

    private string Sentence(string when, IEnumerable<Match> matches)
    {
        var spoken = matches.Select(match => plan.Words.Match(match, Since(match))).DefaultIfEmpty(Say("matches.none"));
        return $"{when}: {string.Join("; ", spoken)}";
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
