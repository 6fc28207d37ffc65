using System.Text.Json.Nodes;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Web.Year;

/// <summary>
/// What the pointer and the keys can take hold of, for the page's script: where each thing lies, and the edits that move,
/// stretch or remove it, with gaps.
/// </summary>
internal static class Graspable
{
    /// <summary>By item id, as the drawing names them ("match/ID").</summary>
    public static string Of(Season season) => Template.Of(Things(season).ToDictionary(thing => thing.Id, thing => thing.Grip, StringComparer.Ordinal));

    private static IEnumerable<(string Id, object Grip)> Things(Season season)
    {
        foreach (var match in season.Matches)
        {
            yield return ($"match/{match.Id}", new
            {
                day = match.Day,
                lastDay = match.LastDay ?? match.Day,
                move = new { edit = "moveMatch", match = match.Id.Text, day = "$day", lastDay = "$lastDayOrNone", kickOff = match.KickOff?.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture) },
                remove = new { edit = "removeMatch", match = match.Id.Text },
            });
        }
        foreach (var item in season.Events)
        {
            yield return ($"event/{item.Id}", new
            {
                day = item.Days.First,
                lastDay = item.Days.Last,
                first = season.WeekOf(item.Days.First)?.Number - 1 ?? 0,
                last = season.WeekOf(item.Days.Last)?.Number - 1 ?? season.Weeks.Length - 1,
                stretch = "days",
                move = Spanned(new SetEvent(item), "event"),
                remove = new { edit = "removeEvent", @event = item.Id.Text },
            });
        }
        foreach (var test in season.TestDays)
        {
            var move = Template.Node(new SetTestDay(test));
            move["testDay"]!["day"] = "$day";
            yield return ($"test/{test.Id}", new { day = test.Day, lastDay = test.Day, move, remove = new { edit = "removeTestDay", testDay = test.Id.Text } });
        }
        foreach (var note in season.Notes)
            yield return ($"note/{note.Id}", new { day = note.Days.First, lastDay = note.Days.Last, move = Spanned(new SetNote(note), "note"), remove = new { edit = "removeNote", note = note.Id.Text } });
        foreach (var run in season.Phases)
            yield return Run($"phase/{run.Id}", run.First, run.Last, new PaintPhase(run.First.Id, run.Last.Id, run.Id, run.Phase.Kind, run.Id, run.Phase.Name), "erasePhase");
        foreach (var run in season.Blocks)
            yield return Run($"block/{run.Id}", run.First, run.Last, new PaintBlock(run.First.Id, run.Last.Id, run.Id, run.Block.Kind, run.Id, run.Block.Name), "eraseBlock");
    }

    private static JsonNode Spanned(Edit edit, string thing)
    {
        var node = Template.Node(edit);
        node[thing]!["days"] = new JsonObject { ["first"] = "$day", ["last"] = "$lastDay" };
        return node;
    }

    private static (string Id, object Grip) Run(string id, SeasonWeek first, SeasonWeek last, Edit edit, string erase)
    {
        var paint = Template.Node(edit);
        (paint["first"], paint["last"], paint["rest"]) = ("$first", "$last", "$new");
        return (id, new
        {
            day = first.Days.First,
            lastDay = last.Days.Last,
            first = first.Number - 1,
            last = last.Number - 1,
            stretch = "weeks",
            paint,
            erase = new { edit = erase, first = "$first", last = "$last", rest = "$new" },
        });
    }
}
