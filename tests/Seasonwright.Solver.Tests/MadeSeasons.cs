using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Wire;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// The ten kinds of season that a coach plans, made up from a few parameters: weeks, where the matches lie, what closes the gym. They
/// are committed as season files under tests/Cases/solver/seasons; <see cref="The_files_are_what_is_made_here"/> writes
/// them anew where WRITE names that folder.
/// </summary>
public class MadeSeasons
{
    private static readonly DateOnly Monday = new(2027, 7, 5);

    /// <summary>Name and edits; weeks and days from 1.</summary>
    internal static IEnumerable<(string Name, Season Season)> All()
    {
        // A field league on Saturdays with six cup weeks and a winter break.
        yield return Made("s1-field-league", 53, [.. Weekly(9, 46, 6, but: [25, 26]), .. Cup(13, 17, 21, 29, 33, 37), Closed(EventKind.Holiday, 25, 26, 0), .. Friendlies(6, 7, 8)], key: [(33, 6), (46, 6)]);
        // A school: holidays, exams, a squad that comes from nothing. One of its key matches comes three weeks after two weeks off, two of them exams: nobody tapers there. The other school has it before them.
        yield return School("s2-school", 22);
        yield return School("s2b-school-early-key", 16);
        // Two tournaments of five matches, each after a preparation of its own.
        yield return Made("s3-two-tournaments", 50, [.. Friendlies(8, 9, 14, 17), .. Tournament(21), .. Friendlies(34, 38, 41), .. Tournament(45)], key: [(21, 4), (45, 4)]);
        // Short, by players who kept training.
        yield return Made("s4-short", 16, Weekly(4, 14, 6), key: [(14, 6)]);
        // Two matches in many weeks, three in four of them.
        yield return Made("s5-dense-league", 46, [.. Weekly(8, 43, 6, but: [25]), .. new[] { 10, 13, 16, 19, 22, 28, 31, 34, 37, 40 }.Select(week => On(week, 3)), .. new[] { 16, 22, 31, 37 }.Select(week => On(week, 1)), .. Friendlies(5, 6, 7)], key: [(24, 6), (43, 6)]);
        // 82 matches, three a week, and a play-off of one every second day.
        yield return Made("s6-82-matches", 42, [.. Enumerable.Range(5, 27).SelectMany(week => new[] { On(week, 2), On(week, 4), On(week, 6) }), On(32, 3), .. Enumerable.Range(33, 7).SelectMany(week => new[] { On(week, 2), On(week, 5) }), .. Friendlies(3, 4)], key: [(33, 2), (36, 2), (39, 5)]);
        // The calendar of the clashes, see verdicts.csv: eight weeks before sixteen with a match.
        yield return Made("s7-clashes", 24, Weekly(9, 22, 6), key: [(16, 6), (22, 6)]);
        // The same with a preparation of five weeks.
        yield return Made("s7b-short-preparation", 24, Weekly(6, 22, 6), key: [(22, 6)]);
        // Three tournaments.
        yield return Made("s9-three-tournaments", 53, [.. Friendlies(9, 10), .. Tournament(14), .. Friendlies(26), .. Tournament(31), .. Friendlies(44), .. Tournament(50)], key: [(14, 4), (31, 4), (50, 4)]);
        // A long preparation for a short league.
        yield return Made("s10-long-preparation", 53, [.. Weekly(37, 50, 6), .. Friendlies(24, 28, 32, 35), Closed(EventKind.Holiday, 25, 26, 0)], key: [(43, 6), (50, 6)]);
    }

    [Fact]
    public void The_files_are_what_is_made_here()
    {
        foreach (var (name, season) in All())
        {
            var text = SeasonFile.Write(season, Seasons.Team);
            if (Environment.GetEnvironmentVariable("WRITE") is { } folder) File.WriteAllText(System.IO.Path.Combine(folder, $"{name}.json"), text);
            else Assert.Equal(File.ReadAllText(Truth.Tests.Cases.PathOf($"solver/seasons/{name}.json")), text);
        }
    }

    private static (string, Season) Made(string name, int weeks, IEnumerable<SeasonEdit> edits, (int Week, int Day)[] key) =>
        (name, Seasons.Made([Seasons.Start(Monday, weeks), .. edits, .. key.Select(match => On(match.Week, match.Day, Importance.Key))]));

    private static (string, Season) School(string name, int key) => Made(name, 40,
        [.. Weekly(7, 36, 6, but: [9, 17, 18, 29]), Closed(EventKind.Holiday, 9, 9, 0), Closed(EventKind.Holiday, 17, 18, 0), Closed(EventKind.Holiday, 29, 29, 0), Closed(EventKind.Exams, 20, 21, 60), Closed(EventKind.Exams, 37, 38, 60), .. Friendlies(5, 6)], key: [(key, 6), (36, 6)]);

    private static DateOnly Day(int week, int day) => Monday.AddDays(7 * week + day - 8);

    private static SetMatch On(int week, int day, Importance importance = Importance.Regular) => new(new Match(new($"m{week}-{day}"), Day(week, day), Importance: importance));

    private static IEnumerable<SeasonEdit> Weekly(int first, int last, int day, params int[] but) => Enumerable.Range(first, last - first + 1).Except(but).Select(week => On(week, day));

    private static IEnumerable<SeasonEdit> Cup(params int[] weeks) => weeks.Select(week => On(week, 3));

    private static IEnumerable<SeasonEdit> Friendlies(params int[] weeks) => weeks.Select(week => On(week, 6, Importance.Friendly));

    /// <summary>Three matches in its first week, two in the second.</summary>
    private static IEnumerable<SeasonEdit> Tournament(int week) => [On(week, 4, Importance.Key), On(week, 6, Importance.Key), On(week, 7, Importance.Key), On(week + 1, 3, Importance.Key), On(week + 1, 5, Importance.Key)];

    private static SetEvent Closed(EventKind kind, int first, int last, int training) => Seasons.Event(kind, new DaySpan(Day(first, 1), Day(last, 7)), training);
}
