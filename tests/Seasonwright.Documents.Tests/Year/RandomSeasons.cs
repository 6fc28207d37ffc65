using CsCheck;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Year;

namespace Seasonwright.Documents.Tests.Year;

/// <summary>Seasons of every length and fill, names fair and foul, and every way to look at them.</summary>
internal static class RandomSeasons
{
    private static readonly Gen<string> Names = Gen.OneOf(
        "Turnes", "Kalmar", "HC Orsund", "1. Fjordal", "Sports Club of the Most Distant of All Northern Islands", "ישראל כץ", "النادي الرياضي",
        "港湾ハンドボール部", "🤾🏽‍♀️👩‍👩‍👧🏳️‍🌈", "Ł", "WWWWWWWWWWWWWWWW", "a & b <c>", "i", "Łódź-Ýmir");

    private static Gen<T?> Maybe<T>(Gen<T> gen) where T : class => Gen.Select(Gen.Bool, gen, (there, value) => there ? value : null);

    private static Gen<SeasonEdit> Edits(SeasonBook book)
    {
        var weeks = book.Season.Weeks.Length;
        var span = Gen.Select(Gen.Int[1, weeks], Gen.Int[0, 9], (first, more) => (First: book.Week(first), Last: book.Week(Math.Min(weeks, first + more))));
        // Some days lie a little outside.
        var first = book.Season.Days!.Value.First;
        var day = Gen.Int[-9, 7 * weeks + 9].Select(first.AddDays);
        var days = Gen.Select(day, Gen.Int[0, 20], (from, more) => new DaySpan(from, from.AddDays(more)));
        var id = Gen.Int[1, 99_999].Select(n => $"y{n}");
        var quality = Gen.OneOf([.. Quality.Defaults.Select(q => q.Id)]);

        return Gen.OneOf(
            Gen.Select(id, day, Maybe(Names), Gen.Enum<Venue>(), Gen.Enum<Importance>(), Gen.Enum<MatchStatus>(), Gen.Int[0, 9], (i, d, o, v, im, s, n) =>
                (SeasonEdit)new SetMatch(new Match(new(i), d, s == MatchStatus.Window ? d.AddDays(n) : null, n == 3 ? new TimeOnly(18, 30) : null,
                    Opponent: o, Venue: n == 4 ? null : v, Importance: im, Status: s, Round: n == 5 ? "Final" : null))),
            Gen.Select(id, days, Names, Gen.Enum<EventKind>(), Gen.Bool, (i, d, n, k, p) => (SeasonEdit)new SetEvent(new Event(new(i), k, n, d, Provisional: p))),
            Gen.Select(id, span, Gen.Enum<PhaseKind>(), Maybe(Names), (i, s, k, n) => (SeasonEdit)new PaintPhase(s.First, s.Last, new(i), k, new($"r{i}"), n)),
            Gen.Select(id, span, Gen.Enum<BlockKind>(), Maybe(Names), (i, s, k, n) => (SeasonEdit)new PaintBlock(s.First, s.Last, new(i), k, new($"r{i}"), n)),
            Gen.Select(span, Gen.Int[0, 30_000], (s, l) => (SeasonEdit)new SetWeekLoad(s.First, s.Last, new Load(l))),
            Gen.Select(span, Gen.Int[0, 4_000], (s, l) => (SeasonEdit)new SetWeekLoad(s.First, s.Last, new Load(l))),
            Gen.Select(span, quality, Gen.Enum<Emphasis>(), (s, q, e) => (SeasonEdit)new SetEmphasis(s.First, s.Last, q, e)),
            Gen.Select(span, Gen.Int[0, 14], Gen.Int[30, 240], (s, c, m) => (SeasonEdit)new SetPractices(s.First, s.Last, new Practices(c, m > 200 ? null : new Minutes(m)))),
            Gen.Select(span, Gen.Enum<WeekKind>(), (s, k) => (SeasonEdit)new SetWeekKind(s.First, s.Last, k)),
            Gen.Select(id, day, Names, (i, d, n) => (SeasonEdit)new SetTestDay(new TestDay(new(i), d, n))),
            Gen.Select(id, days, Names, (i, d, n) => (SeasonEdit)new SetNote(new Note(new(i), d, n))),
            Gen.Select(span, Names, (s, n) => (SeasonEdit)new SetWeekNote(s.First, n)),
            Gen.Select(span, Gen.Bool, (s, l) => (SeasonEdit)new LockWeeks(s.First, s.Last, l)),
            Gen.Select(span, Gen.Bool, (s, r) => (SeasonEdit)new MarkReady(s.First, s.Last, r)),
            Gen.Select(id, Names, Gen.Enum<TrackForm>(), Gen.Enum<TrackGrain>(), Gen.Int[1, 9], (i, n, f, g, p) =>
                (SeasonEdit)new SetTrack(new Track(new($"{p}_{f}.{g}"), n, f, g, ["gym", "hall"], "km/h", p))),
            Gen.Select(Gen.Int[1, 9], Gen.Enum<TrackForm>(), span, Names, Gen.Int[0, 12_345], (p, f, s, n, x) => (SeasonEdit)new SetCells(
                [new TrackCell(new($"{p}_{f}.{TrackGrain.Week}"), CellPlace.Of(s.First), Value(f, n, x))])),
            Gen.Select(Gen.Int[1, 9], Gen.Enum<TrackForm>(), day, Names, Gen.Int[0, 12_345], (p, f, d, n, x) => (SeasonEdit)new SetCells(
                [new TrackCell(new($"{p}_{f}.{TrackGrain.Day}"), CellPlace.Of(d), Value(f, n, x))])));
    }

    private static string Value(TrackForm form, string name, int number) => form switch
    {
        TrackForm.Number => number.ToString(System.Globalization.CultureInfo.InvariantCulture),
        TrackForm.Choice => number % 2 == 0 ? "gym" : "hall",
        TrackForm.Tick => "yes",
        _ => name,
    };

    public static Gen<Season> Any { get; } = Gen.Select(
            Gen.Frequency((1, Gen.Const(1)), (1, Gen.Const(60)), (4, Gen.Int[1, 60])), Gen.Int[0, 3_000], Gen.Enum<DayOfWeek>(),
            (weeks, days, start) => new SeasonBook(weeks, new DateOnly(2024, 1, 1).AddDays(days), start))
        .SelectMany(book => Edits(book).Array[0, 80], (book, edits) => edits.Aggregate(book.Season, Written));

    /// <summary>A refused edit changes nothing.</summary>
    private static Season Written(Season season, SeasonEdit edit) =>
        Decider.Decide(season, edit) is Accepted accepted ? season.With(accepted.Step) : season;

    public static Gen<YearView> Views { get; } = Gen.Select(
        Gen.OneOf(Gen.OneOf(768.0, 1024, 1240, 1500), Gen.Double[100, 2400]), Gen.Enum<YearZoom>(), Gen.Int[-3, 70], Gen.Int[0, 3_500],
        Gen.OneOf("load", "emphasis", "dates", "matches", "events", "none"), Gen.OneOf("load", "emphasis", "dates", "weeks", "none"),
        (width, zoom, first, today, hidden, folded) => new YearView
        {
            Width = width,
            Zoom = zoom,
            FirstWeek = first,
            Today = today > 3_000 ? null : new DateOnly(2024, 1, 1).AddDays(today),
            Hidden = [hidden],
            Folded = [folded],
        });

    public static Gen<(Season Season, YearDrawing Drawing)> Drawn { get; } = Gen.Select(Any, Views,
        (season, view) => (season, YearDrawing.Of(season, Setup.Empty(new("harbour-vale")), view)));
}
