using System.Diagnostics;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Desk.Demo;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Calendars;
using Seasonwright.Documents.HandOut.Posters;

// workbooks DIR N    N workbooks of the year in a folder, each begun a week later
// redate N           gives the year another first day and makes its poster, N times: first ms, then the median of the others
// each N             every output N times: a line each, with first ms, median ms and bytes
// grow N             N posters, each of another first day: MiB held after the first tenth and at the end
return args switch
{
    ["workbooks", var folder, var count] => Workbooks(folder, Number(count)),
    ["redate", var count] => Redate(Number(count)),
    ["each", var count] => Each(Number(count)),
    ["grow", var count] => Grow(Number(count)),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("workbooks DIR N | redate N | each N | grow N");
    return 2;
}

static int Workbooks(string folder, int count)
{
    foreach (var (shared, number) in Moved().Take(count).Select((shared, at) => (shared, at + 1)))
        File.WriteAllBytes(Path.Combine(folder, $"year-{number}.xlsx"), HandOuts.Workbook(shared).Bytes);
    return 0;
}

static int Redate(int count)
{
    var seasons = Moved().GetEnumerator();
    Say("redate and poster", Times(count, () =>
    {
        seasons.MoveNext();
        return HandOuts.Poster(seasons.Current, new PosterChoices(PaperSize.A3)).Bytes.Length;
    }));
    return 0;
}

static int Each(int count)
{
    var shared = Moved().First();
    var day = shared.Season.Days!.Value.First;
    foreach (var (name, make) in new (string, Func<HandOutFile>)[]
    {
        ("poster A3, PDF", () => HandOuts.Poster(shared, new PosterChoices(PaperSize.A3))),
        ("poster A4, PDF", () => HandOuts.Poster(shared, new PosterChoices(PaperSize.A4))),
        ("poster A3, SVG", () => HandOuts.PosterDrawing(shared, new PosterChoices(PaperSize.A3))),
        ("head coach's sheet, PDF", () => HandOuts.HeadCoachPaper(shared, day, PaperSize.A4)),
        ("head coach's sheet, HTML", () => HandOuts.HeadCoachPage(shared, day)),
        ("week sheet, PDF", () => HandOuts.WeekSheet(shared, shared.Season.Weeks[15], PaperSize.A4)),
        ("calendar", () => HandOuts.Calendar(shared, new CalendarChoices(Practices: true), CalendarRevisions.None)),
        ("workbook", () => HandOuts.Workbook(shared)),
    }) Say(name, Times(count, () => make().Bytes.Length));
    return 0;
}

static int Grow(int count)
{
    var early = 0.0;
    foreach (var (shared, number) in Moved().Take(count).Select((shared, at) => (shared, at + 1)))
    {
        HandOuts.Poster(shared, new PosterChoices(PaperSize.A3));
        if (number == count / 10) early = Held();
    }
    Console.WriteLine($"{Text(early)} {Text(Held())}");
    return 0;

    static double Held()
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();
        using var process = Process.GetCurrentProcess();
        return process.WorkingSet64 / 1048576.0;
    }
}

// The demo's year at 53 weeks, then the same begun a week later, and back, and on: the way a coach tries first days.
static IEnumerable<SharedSeason> Moved()
{
    var demo = DemoSeason.Make(new DateOnly(2027, 7, 5));
    var season = demo.Edits.Aggregate(Season.Empty(demo.Id), Do);
    var setup = demo.Setup.Aggregate(Setup.Empty(new TeamId("harbour-vale")), (state, edit) => Decider.Decide(state, edit) is Accepted accepted ? state.With(accepted.Step) : throw new InvalidOperationException("refused"));
    var ids = new NaturalIds(season.Id);
    season = Do(season, new Resize(53, Enumerable.Range(200, 53).Select(ids.Week).ToValueList()));
    var first = season.Frame.FirstDay;
    for (var turn = 0; ; turn++)
    {
        yield return new SharedSeason(season, setup, Edition.Draft(new DateOnly(2027, 7, 1)));
        season = Do(season, new Redate(first.AddDays(7 * ((turn + 1) % 4)), season.Frame.WeekStart, RedatePlan.Moves, ValueList<WeekId>.Empty));
    }
}

static Season Do(Season season, SeasonEdit edit) => Decider.Decide(season, edit) switch
{
    Accepted accepted => season.With(accepted.Step),
    Refused refused => throw new InvalidOperationException(string.Join(' ', refused.Reasons.Select(reason => reason.Sentence))),
    _ => throw new InvalidOperationException("A decision is accepted or refused."),
};

static (List<double> Times, int Bytes) Times(int count, Func<int> make)
{
    var (times, bytes) = (new List<double>(), 0);
    for (var i = 0; i < count; i++)
    {
        var from = Stopwatch.GetTimestamp();
        bytes = make();
        times.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
    }
    return (times, bytes);
}

static void Say(string name, (List<double> Times, int Bytes) run)
{
    var others = run.Times.Skip(1).Order().ToList();
    Console.WriteLine($"| {name} | {Text(run.Times[0])} | {Text(others[others.Count / 2])} | {Text(others[^1])} | {run.Bytes.ToString("N0", CultureInfo.InvariantCulture)} |");
}

static int Number(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);

static string Text(double number) => number.ToString("0.0", CultureInfo.InvariantCulture);
