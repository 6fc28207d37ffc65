using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Home;

/// <summary>A home programme for everybody it is for, as content.</summary>
/// <param name="Title">"Winter break".</param>
/// <param name="When">"Mon 20 Dec 2027 – Sun 2 Jan 2028".</param>
/// <param name="Kit">What is there, in words.</param>
/// <param name="Call">Who is called, clinicians first: "doctor: Siri Fenwold".</param>
/// <param name="LeftOut">Names of exercises that nothing at home comes near to.</param>
/// <param name="Sheets">In the order of the squad.</param>
public sealed record SquadHome(SharedSeason Shared, HomeProgramme Programme, string Title, string When, string Kit, ValueList<string> Call, ValueList<string> LeftOut, ValueList<HomeSheet> Sheets)
{
    /// <summary>Who is called about health first, then about the work.</summary>
    private static readonly StaffRole[] Called = [StaffRole.Doctor, StaffRole.Physiotherapist, StaffRole.StrengthAndConditioning];

    /// <param name="players">The squad in the order its pages are handed out; who it is not for is left out.</param>
    /// <param name="names">Of the staff; who is not named is called by the role.</param>
    public static SquadHome Of(SharedSeason shared, HomeProgramme programme, IEnumerable<Player> players, IReadOnlyDictionary<PersonId, string> names)
    {
        var (season, setup) = (shared.Season, shared.Setup);
        var call = Called.SelectMany(role => season.Staff.Where(one => one.Role == role)).Select(one => Person(one, names)).ToList();
        return new(shared, programme, PlainText.Clean(programme.Name), programme.Span().Words(setup.Locale), KitWords(programme.Kit, setup.Locale),
            [.. call.DefaultIfEmpty(Say("home.call-nobody"))], AthleteHome.LeftOut(programme, season, setup).Select(exercise => PlainText.Clean(exercise.Name)).ToValueList(),
            players.Where(player => AthleteHome.IsFor(programme, player, season, setup.Id)).Select(player => SheetOf(AthleteHome.Of(programme, season, setup, player), player.Athlete, season, setup.Locale)).ToValueList());
    }

    /// <summary>"bands, room to run, dumbbells 2 to 20 kg"; that there is nothing, where there is nothing.</summary>
    public static string KitWords(HomeKit kit, LocaleSettings locale)
    {
        string?[] weights = [kit.Dumbbells is { } two ? Say("home.dumbbells", Steps(two)) : null, kit.Kettlebells is { } bell ? Say("home.kettlebells", Steps(bell)) : null];
        var words = kit.Equipment.Where(one => !(one == Equipment.Dumbbells && kit.Dumbbells is not null) && !(one == Equipment.Kettlebell && kit.Kettlebells is not null)).Select(one => one.Word()).Concat(weights.OfType<string>()).ToList();
        return words.Count > 0 ? string.Join(", ", words) : Say("home.kit-nothing");

        string Steps(Core.Quantities.WeightSteps steps) => steps.From == steps.To ? WorkWords.Of(new Core.Quantities.Weight(steps.From, steps.Unit), locale)
            : Say("home.steps", WorkWords.Number(steps.From, locale), WorkWords.Of(new Core.Quantities.Weight(steps.To, steps.Unit), locale));
    }

    private static string Person((PersonId Person, StaffRole Role) one, IReadOnlyDictionary<PersonId, string> names)
    {
        var role = Sentences.Say($"staff.{one.Role}");
        return names.TryGetValue(one.Person, out var name) ? Say("home.call-one", PlainText.Clean(name), role) : role;
    }

    private static HomeSheet SheetOf(AthleteHome home, Athlete athlete, Season season, LocaleSettings locale) => new(
        PlainText.Clean(athlete.Number ?? ""), PlainText.Clean(athlete.Name), home.AsksFirst, home.IsModified, home.IsMinor, Notes(home, locale).ToValueList(),
        home.Days.GroupBy(day => day.Week).Select(week => new HomeWeekRow(Say("home.week", week.Key), week.Select(day => CellOf(day, season, locale)).ToValueList())).ToValueList(),
        home.AsksFirst ? [] : Parts(home, season, locale));

    private static IEnumerable<string> Notes(AthleteHome home, LocaleSettings locale)
    {
        if (home.AsksFirst)
        {
            yield return Say("home.ask-first");
            yield break;
        }
        if (home.MostMinutes is { } most) yield return Say("home.most-minutes", most.Value);
        if (home.IsMinor) yield return Say("home.minor");
        if (home.Days.Any(day => day.Run?.Instead == true || day.Lines.Any(line => line.Work.Instead))) yield return Say("card.star");
        if (!home.Days.Any(day => day.Run is not null)) yield break;
        if (home.Test is not { } test) yield return Say("home.no-test");
        else yield return Say(home.Programme.FirstDay.DayNumber - test.Day.DayNumber > RunTest.FreshDays ? "home.test-old" : "home.test", test.Metres, HomeWords.Time(test.Seconds), test.Day.Long(locale));
    }

    private static HomeCell CellOf(AthleteHomeDay day, Season season, LocaleSettings locale)
    {
        List<string> does = [.. day.Lines.Count > 0 ? [NameOf(day, season)] : Array.Empty<string>(), .. day.Run is { } run ? [RunName(run)] : Array.Empty<string>()];
        return new(day.Day.Short(locale), [.. does.DefaultIfEmpty(Say(day.IsAway ? "home.away" : "home.free"))], does.Count == 0);
    }

    private static ValueList<HomePart> Parts(AthleteHome home, Season season, LocaleSettings locale)
    {
        // Weekdays on which the same is done in every week share one part.
        var weekdays = home.In(1).Select(day => day.Day.DayOfWeek).ToList();
        return weekdays.Select(weekday => (Weekday: weekday, Days: home.Days.Where(day => day.Day.DayOfWeek == weekday && !day.IsAway && !day.IsFree).ToList())).Where(one => one.Days.Count > 0)
            .Select(one => (one.Weekday, one.Days, Title: string.Join(" + ", Titles(one.Days[0], season)), Note: PlainText.Clean(one.Days[0].Planned?.Note ?? ""), Rows: Rows(one.Days, home, season, locale)))
            .GroupBy(one => (one.Title, one.Note, one.Rows))
            .Select(same => new HomePart(Say("home.part", string.Join(", ", same.Select(one => CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedDayName(one.Weekday))), same.Key.Title), same.Key.Note, same.Key.Rows)).ToValueList();
    }

    private static IEnumerable<string> Titles(AthleteHomeDay day, Season season)
    {
        if (day.Lines.Count > 0) yield return NameOf(day, season);
        if (day.Run is { } run) yield return RunName(run);
    }

    private static ValueList<HomeRow> Rows(IReadOnlyList<AthleteHomeDay> days, AthleteHome home, Season season, LocaleSettings locale)
    {
        var workout = days.Select(day => day.Planned?.Workout is { } id ? season.Workout(id) : null).FirstOrDefault(one => one is not null);
        // The exercises stay over the weeks but where a restriction begins in between.
        var rows = days.SelectMany(day => day.Lines.Select(line => (day.Week, Line: line))).GroupBy(one => (one.Line.Work.Item.Id, one.Line.Work.Exercise.Id)).Select(lines =>
        {
            var first = lines.First().Line;
            var name = PlainText.Clean(first.Work.Exercise.Name);
            return new HomeRow(workout?.PlaceOf(first.Work.Item) ?? "", first.Work.Instead ? Say("card.instead", name) : name, PlainText.Clean(HomeWords.How(first, locale)), Weeks(home, lines.ToDictionary(one => one.Week, one => HomeWords.Of(one.Line, locale))));
        });
        var runs = days.Where(day => day.Run is not null).Select(day => (day.Week, Run: day.Run!)).GroupBy(one => one.Run.Exercise.Id).Select(same =>
        {
            var first = same.First().Run;
            return new HomeRow("", first.Instead ? Say("card.instead", RunName(first)) : RunName(first), HomeWords.How(first, home.Test, locale), Weeks(home, same.ToDictionary(one => one.Week, one => HomeWords.Of(one.Run, locale))));
        });
        return rows.Concat(runs).ToValueList();
    }

    private static ValueList<string> Weeks(AthleteHome home, Dictionary<int, string> told)
    {
        var all = Enumerable.Range(1, home.Programme.Weeks).Select(week => told.GetValueOrDefault(week, "–")).ToValueList();
        return all.Distinct(StringComparer.Ordinal).Count() > 1 ? all : [all.Count > 1 ? Say("home.every-week", all[0]) : all[0]];
    }

    private static string NameOf(AthleteHomeDay day, Season season) => PlainText.Clean(day.Planned?.Workout is { } id ? season.Workout(id)?.Name ?? "" : "");

    private static string RunName(AthleteRun run) => run.Exercise.Id == AthleteRun.ExerciseOf(run.Run) ? Say(run.Run.IsSteady ? "home.run-steady" : "home.run-intervals") : PlainText.Clean(run.Exercise.Name);
}
