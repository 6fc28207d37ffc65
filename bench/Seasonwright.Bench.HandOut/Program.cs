using System.Diagnostics;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;
using Seasonwright.Desk;
using Seasonwright.Desk.Demo;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Calendars;
using Seasonwright.Documents.HandOut.Cards;
using Seasonwright.Documents.HandOut.Posters;

// workbooks DIR N    N workbooks of the year in a folder, each begun a week later
// redate N           gives the year another first day and makes its poster, N times: first ms, then the median of the others
// each N             every output N times: a line each, with first ms, median ms and bytes
// cards N            N cards two a page, the same words as plain pages, and what 30 athletes do after one changed cell: a line each
// figures            how high the figures of a weight are on cards of a usual session: a line for each count of a page
// grow N             N posters, each of another first day: MiB held after the first tenth and at the end
return args switch
{
    ["workbooks", var folder, var count] => Workbooks(folder, Number(count)),
    ["redate", var count] => Redate(Number(count)),
    ["each", var count] => Each(Number(count)),
    ["cards", var count] => Cards(Number(count)),
    ["figures"] => Figures(),
    ["grow", var count] => Grow(Number(count)),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("workbooks DIR N | redate N | each N | cards N | figures | grow N");
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

static int Cards(int count)
{
    const int Turns = 9, Squad = 30;
    var shared = Moved().First();
    var (season, setup, session) = (shared.Season, shared.Setup, InTheGym(shared.Season));
    var (many, few) = (Players(count, setup, session.Day), Players(Squad, setup, session.Day));
    var (loads, workout) = (RackLoads.Of(setup.Gym), season.Workout(session.Workout!.Value)!);
    var (item, week) = (workout.Items.Last(one => one.Prescription.Unit == WorkUnit.Repetitions && workout.Parts.Any(part => part.IsWork && part.Items.Contains(one))), season.WeekOf(session.Day)!);
    var plain = Plain(SquadCards.Of(shared, session, many), PaperSize.A4);
    Say($"{count} cards, two a page, PDF", Times(Turns, () => HandOuts.Cards([SquadCards.Of(shared, session, many)], 2, PaperSize.A4).Bytes.Length));
    Say("of which who does what with which weight", Times(Turns, () => SquadCards.Of(shared, session, many).Cards.Count));
    Say($"the same words on {plain.Count} pages of plain text by the same painter", Times(Turns, () => PdfPainter.File("Plain", shared.Edition.Day, plain, Scheme.Light).Length));
    Say($"{count} cards, workbook", Times(Turns, () => HandOuts.CardWorkbook([SquadCards.Of(shared, session, many)]).Bytes.Length));
    var sets = 0;
    Say($"a cell of the workout changed, and what {Squad} athletes do then", Times(200, () =>
    {
        var changed = Do(season, new SetWorkout(workout with { Cells = [new(week.Id, item.Id, item.Prescription with { Sets = 1 + sets++ % 8 })] }));
        return AthleteWork.Of(changed, setup, changed.Sessions.First(one => one.Id == session.Id), few, loads).Count(work => work.IsLifting);
    }));
    return 0;
}

static int Figures()
{
    var shared = Moved().First();
    var session = InTheGym(shared.Season);
    var cards = SquadCards.Of(shared, session, Players(6, shared.Setup, session.Day));
    foreach (var count in CardPaper.Counts)
    {
        // The largest words that end in the unit are the weight of a bar; Inter's figures are 0.727 of its size.
        var sizes = CardPaper.Of(cards, count, PaperSize.A4).SelectMany(page => page.Tracks).SelectMany(track => track.Marks).OfType<TextRun>().Where(text => text.Text.EndsWith(" kg", StringComparison.Ordinal)).Select(text => text.Style.Size).ToList();
        var height = sizes.Min() * 0.75 * 0.727 * 25.4 / 72;
        Console.WriteLine($"| {Text(count)[..^2]} | {Text(height)} | {Text(Math.Atan(height / 2000) * 180 / Math.PI * 60)} |");
    }
    return 0;
}

static Session InTheGym(Season season) => season.Sessions.First(one => one.Workout is not null && !one.IsCancelled);

// Every tenth is restricted, half have a maximum of their own.
static List<Player> Players(int count, Setup setup, DateOnly day) => [.. Enumerable.Range(1, count).Select(number =>
{
    var id = new PersonId(FormattableString.Invariant($"p{number}"));
    return new Player(new Athlete(id, FormattableString.Invariant($"Norlund {number}"), "Ida", Text(number), [], day.AddYears(-20), null), [new(id, setup.Id, day.AddYears(-1), null, LeadingDays.None)],
        number % 10 != 0 ? [] : [new AvailabilityReport(Guid.Empty, id, Availability.Modified(new([RestrictionTag.NoAxialLoad])), day, null, new(ReporterRole.Doctor, true, "Dr Wexcombe"), ReportedHow.Phone, new("coach"), default, true)],
        [], [new(Guid.Empty, id, day.AddDays(-7), new(60 + number % 20, BodyMassUnit.Kilogram), default)],
        number % 2 == 0 ? [] : [Lift("back-squat"), Lift("bench-press"), Lift("trap-bar-deadlift")], [], []);

    LiftTest Lift(string exercise) => new(Guid.Empty, id, new(exercise), day.AddDays(-7), new Weight(60 + number % 50), 1, null, default);
})];

// As many pages and the same words, a line each, nothing measured and nothing drawn.
static ValueList<SheetDrawing> Plain(SquadCards cards, PaperSize paper) => cards.Cards.Chunk(2).Select(page => new SheetDrawing("Plain", paper.Width, paper.Height, 24, 0.75,
    [new TrackDrawing("plain", "Plain", 1000, page.SelectMany(card => new[] { $"{card.Number} {card.Name}", $"{cards.Title} {cards.When}", card.WarmUp }.Concat(card.Notes).Concat(card.Lines.SelectMany(line => new[] { line.Place, line.Exercise, line.Sets, line.Weight, line.Plates, line.How })))
        .Where(text => text.Length > 0).Select((text, at) => (Shape)new TextRun(new(0, 12 + 10 * at), text, new TextStyle(9), Looks.Ink)).ToValueList(), [])])).ToValueList();

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
