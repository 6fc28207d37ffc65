using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>
/// Which details of a thing differ, beyond what its name says: "kick-off 18:00 → 19:30". What has no short words, or is not for
/// everyone's eyes (a note, whether a match is a key one), is only named.
/// </summary>
internal static class DetailWords
{
    public static IEnumerable<string> Of(object? was, object? now) => (was, now) switch
    {
        (Match a, Match b) => Of(a, b),
        (Event a, Event b) => Of(a, b),
        (TestDay a, TestDay b) => Of(a, b),
        (Session a, Session b) => Of(a, b),
        (Note a, Note b) => Told("detail.last-day", a.Days.Last, b.Days.Last, MatchWords.Of),
        (Goal a, Goal b) => Of(a, b),
        _ => [],
    };

    private static IEnumerable<string> Of(Match was, Match now) =>
    [
        .. Told("detail.kick-off", was.KickOff, now.KickOff, Time),
        .. Told("detail.zone", was.Zone, now.Zone, Text),
        // What was or is off is said with the match's name.
        .. was.IsOff || now.IsOff ? [] : Told("detail.status", was.Status, now.Status, status => Sentences.Say($"status.{status}")),
        .. Told("detail.competition", was.Competition, now.Competition, Text),
        .. Told("detail.round", was.Round, now.Round, Text),
        .. Told("detail.place", was.Place, now.Place, Text),
        .. Told("detail.result", was.Result, now.Result, Text),
        .. Named("detail.importance", was.Importance, now.Importance),
        .. Named("detail.condition", was.Condition, now.Condition),
        .. Named("detail.series", was.Series, now.Series),
        .. Decided(was.Outcome, now.Outcome),
        .. Named("detail.note", was.Note, now.Note),
        .. Told("detail.listed", was.Source?.Vanished != true, now.Source?.Vanished != true, YesOrNo),
    ];

    private static IEnumerable<string> Decided(Outcome? was, Outcome? now) => was == now ? [] :
        [Sentences.Say(now switch { Outcome.Won => "detail.won", Outcome.Lost => "detail.lost", _ => "detail.undecided" })];

    private static IEnumerable<string> Of(Event was, Event now) =>
    [
        .. Named("detail.kind", was.Kind, now.Kind),
        .. Told("detail.part", was.Part, now.Part, Text),
        .. Told("detail.for", was.For, now.For, Text),
        .. Told("detail.training", was.Training, now.Training, percent => percent.ToString()!),
        .. Told("detail.certain", was.Provisional, now.Provisional, provisional => YesOrNo(!provisional)),
        .. Told("detail.place", was.Place, now.Place, Text),
        .. Told("detail.nights", was.Nights, now.Nights, Number),
        .. Named("detail.journey", was.Legs, now.Legs),
        .. Named("detail.note", was.Note, now.Note),
        .. Told("detail.listed", was.Source?.Vanished != true, now.Source?.Vanished != true, YesOrNo),
    ];

    private static IEnumerable<string> Of(TestDay was, TestDay now) =>
    [
        .. Told("detail.part", was.Part, now.Part, Text),
        .. Told("detail.for", was.For, now.For, Text),
        .. Told("detail.listed", was.Source?.Vanished != true, now.Source?.Vanished != true, YesOrNo),
    ];

    /// <summary>Of one that does not take place nothing else matters; one that went to another part of the day has no time yet, which needs no word.</summary>
    private static IEnumerable<string> Of(Session was, Session now) => now.IsCancelled && !was.IsCancelled ? [Sentences.Say("session.cancelled")] :
    [
        .. was.IsCancelled && !now.IsCancelled ? [Sentences.Say("session.back")] : Array.Empty<string>(),
        .. Named("detail.kind", was.Kind, now.Kind),
        .. now.Start is null && was.Slot != now.Slot ? [] : Told("detail.start", was.Start, now.Start, Time),
        .. Turned(was.Minutes.Value, now.Minutes.Value, "session.shorter", "session.longer", now.Minutes),
        .. Turned(was.Rpe.Value, now.Rpe.Value, "session.easier", "session.harder", now.Rpe),
        .. Named("detail.name", was.Name, now.Name),
        .. Told("detail.place", was.Place, now.Place, Text),
        // A room gives the place its name.
        .. was.Place == now.Place ? Named("detail.room", was.Room, now.Room) : [],
        .. Named("detail.for", was.Groups, now.Groups),
        .. Named("detail.workout", was.Workout, now.Workout),
        .. Named("detail.doses", was.Doses, now.Doses),
        .. Named("detail.waves", was.Waves, now.Waves),
        .. Named("detail.lock", was.IsLocked, now.IsLocked),
    ];

    private static IEnumerable<string> Turned(decimal was, decimal now, string less, string more, object words) => was == now ? [] : [Sentences.Say(now < was ? less : more, words)];

    private static IEnumerable<string> Of(Goal was, Goal now) =>
    [
        .. Told("detail.rank", was.Rank, now.Rank, Number),
        .. Told("detail.from", was.From, now.From, Number),
        .. Told("detail.to", was.To, now.To, Number),
        .. Told("detail.by", was.By, now.By, day => MatchWords.Of(day!.Value)),
        .. Named("detail.quality", was.Quality, now.Quality),
    ];

    /// <param name="words">Of a value that is there; where there is none the sentence says so.</param>
    private static IEnumerable<string> Told<T>(string detail, T was, T now, Func<T, string> words) => Equals(was, now) ? [] :
        [Sentences.Say("detail.told", Sentences.Say(detail), Words(was, words), Words(now, words))];

    private static string Words<T>(T value, Func<T, string> words) => value is null ? Sentences.Say("detail.none") : words(value);

    private static IEnumerable<string> Named<T>(string detail, T was, T now) => Equals(was, now) ? [] : [Sentences.Say("detail.named", Sentences.Say(detail))];

    private static string YesOrNo(bool isSo) => Sentences.Say(isSo ? "detail.yes" : "detail.no");

    private static string Text(string? text) => text!;

    private static string Time(TimeOnly? time) => time!.Value.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Number<T>(T number) => string.Create(CultureInfo.InvariantCulture, $"{number}");
}
