using System.Diagnostics;
using System.Globalization;
using Seasonwright.Bench.Rules;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Year;

// Prints a table: milliseconds of all live rules after each of so many drags, beside laying the same year out, which the page
// does after each of them too. Interleaved; the first 50 rounds warm up and are not counted.
const int warm = 50, counted = 400;
var setup = Setup.Empty(new("team"));
var season = MadeUpSeason.Make();
List<double> check = [], layout = [], again = [];
for (var round = 0; round < warm + counted; round++)
{
    season = MadeUpSeason.Dragged(season, round);
    var isCounted = round >= warm;
    Measure(layout, () => YearDrawing.Of(season, setup, new YearView { Width = 1440 }), isCounted);
    season = MadeUpSeason.Dragged(season, round + 1);
    Measure(check, () => Rulebook.Check(season, setup), isCounted);
    Measure(again, () => Rulebook.Check(season, setup), isCounted);
}
var checkup = Rulebook.Check(season, setup);
Console.WriteLine("| | median, ms | 95 %, ms | worst, ms |");
Console.WriteLine("|---|---|---|---|");
Row($"all {Rulebook.All.Count(rule => rule.IsLive)} live rules after a drag ({checkup.Findings.Count} findings)", check);
Row("the same, the season's lists being made already", again);
Row("laying the whole year out at 1440 px after a drag, for comparison", layout);

static void Measure(List<double> times, Action act, bool isCounted)
{
    var start = Stopwatch.GetTimestamp();
    act();
    if (isCounted) times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
}

static void Row(string what, List<double> times)
{
    var sorted = times.Order().ToList();
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {sorted[sorted.Count / 2]:0.00} | {sorted[(int)(0.95 * sorted.Count)]:0.00} | {sorted[^1]:0.00} |"));
}
