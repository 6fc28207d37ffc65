using System.Collections.Immutable;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Documents.Year;

/// <summary>What every track of one drawing stands on: the season, how it is looked at, and the columns.</summary>
internal sealed class YearPlan
{
    private const int WeeksByWeek = 14;
    private const int WeeksByDay = 5;
    /// <summary>px between the end of the chart and that of the drawing.</summary>
    internal const double RightMargin = 8;

    private const double LeastForFigures = 17;

    public YearPlan(Season season, Setup setup, YearView view)
    {
        (Season, Setup, View) = (season, setup, view);
        Width = Math.Max(YearView.LeastWidth, double.IsFinite(view.Width) ? view.Width : YearView.LeastWidth);
        LabelWidth = Math.Round(Math.Clamp(Width * 0.115, 100, 150));
        var weeks = WeeksSeen();
        // On the drawing's grid, so that edges reckoned from either side are the same.
        ColumnWidth = weeks.Count == 0 ? 0 : Math.Min(MostColumnWidth, Math.Floor(100 * (Width - LabelWidth - RightMargin) / weeks.Count) / 100);
        Columns = weeks.Select((week, place) => new WeekColumn(week, LabelWidth + place * ColumnWidth, ColumnWidth)).ToValueList();
        Words = new YearWords(season, setup);
        if (Columns.Count == 0)
            return;
        Matches = [.. season.Matches.Where(match => Days.Overlaps(match.Days!.Value))];
        Events = [.. season.Events.Where(e => Days.Overlaps(e.Days))];
        TestDays = [.. season.TestDays.Where(test => Days.Contains(test.Day))];
        Notes = [.. season.Notes.Where(note => Days.Overlaps(note.Days))];
    }

    // A season of one week is not drawn as one bar across the room.
    private double MostColumnWidth => View.Zoom == YearZoom.Day ? 350 : 160;

    public Season Season { get; }

    public Setup Setup { get; }

    public YearView View { get; }

    public YearWords Words { get; }

    /// <summary>Matches that touch the weeks seen, by day; the season makes such lists anew each time it is asked.</summary>
    public ImmutableArray<Match> Matches { get; } = [];

    public ImmutableArray<Event> Events { get; } = [];

    public ImmutableArray<TestDay> TestDays { get; } = [];

    public ImmutableArray<Note> Notes { get; } = [];

    public double Width { get; }

    public double LabelWidth { get; }

    public ValueList<WeekColumn> Columns { get; }

    public double ColumnWidth { get; }

    public double DayWidth => ColumnWidth / 7;

    /// <summary>Left edge of the first column.</summary>
    public double Left => LabelWidth;

    /// <summary>Right edge of the last column.</summary>
    public double Right => Columns.Count == 0 ? LabelWidth : Columns[^1].Right;

    public bool IsByDay => View.Zoom == YearZoom.Day;

    /// <summary>Columns wide enough for words.</summary>
    public bool HasWords => ColumnWidth >= 64;

    /// <summary>Columns too slim for two digits of 9 px with air at both sides: then only some weeks have figures.</summary>
    public bool IsSlim => ColumnWidth < LeastForFigures;

    /// <summary>Whether a week has figures of its own: every week, or in slim columns the first and every so many after it.</summary>
    public bool HasFigures(WeekColumn column) => (column.Week.Number - 1) % Stride == 0;

    /// <summary>Every how many weeks there is room for a figure.</summary>
    public int Stride => IsSlim ? (int)Math.Ceiling(LeastForFigures / ColumnWidth) : 1;

    /// <summary>The days seen.</summary>
    public DaySpan Days => new(Columns[0].Week.Days.First, Columns[^1].Week.Days.Last);

    /// <summary>Today, if it is seen.</summary>
    public DateOnly? Today => Columns.Count > 0 && View.Today is { } today && Days.Contains(today) ? today : null;

    public WeekColumn ColumnOf(DateOnly day) => Columns[Season.Frame.Grid.NumberOf(day) - Columns[0].Week.Number];

    public WeekColumn? ColumnOf(SeasonWeek week) =>
        week.Number - Columns[0].Week.Number is var place && place >= 0 && place < Columns.Count ? Columns[place] : null;

    /// <summary>The part of a span that is seen, or null.</summary>
    public DaySpan? Seen(DaySpan days) => days.Overlaps(Days)
        ? new DaySpan(days.First < Days.First ? Days.First : days.First, days.Last > Days.Last ? Days.Last : days.Last)
        : null;

    /// <summary>Left and right edge of days that are seen.</summary>
    public (double From, double To) Across(DaySpan seen) =>
        (ColumnOf(seen.First).XOf(seen.First), ColumnOf(seen.Last).XOf(seen.Last) + DayWidth);

    /// <summary>The columns between two weeks, both inside, that are seen; null if none is.</summary>
    public (WeekColumn First, WeekColumn Last)? Across(SeasonWeek first, SeasonWeek last)
    {
        var from = Math.Max(first.Number, Columns[0].Week.Number);
        var to = Math.Min(last.Number, Columns[^1].Week.Number);
        return from > to ? null : (Columns[from - Columns[0].Week.Number], Columns[to - Columns[0].Week.Number]);
    }

    private List<SeasonWeek> WeeksSeen()
    {
        var weeks = Season.Weeks;
        if (View.Zoom == YearZoom.Season)
            return [.. weeks];
        var wished = View.Weeks ?? (View.Zoom == YearZoom.Week ? WeeksByWeek : WeeksByDay);
        var count = Math.Clamp(wished, 1, Math.Max(1, weeks.Length));
        var skip = Math.Clamp(View.FirstWeek - 1, 0, Math.Max(0, weeks.Length - count));
        return [.. weeks.Skip(skip).Take(count)];
    }
}
