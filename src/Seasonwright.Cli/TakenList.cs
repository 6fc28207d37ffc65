using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>A list as it would come into a new season.</summary>
/// <param name="Questions">What it leaves open.</param>
/// <param name="IsBlocked">Nothing can be taken before an answer, or at all.</param>
/// <param name="Notes">What is odd and may yet be right, in words.</param>
/// <param name="Edit">Takes the list in; null where nothing of it can be written.</param>
internal sealed record TakenList(string Name, IReadOnlyList<Question> Questions, IReadOnlyList<Problem> Problems, bool IsBlocked, IReadOnlyList<string> Notes, SeasonEdit? Edit)
{
    /// <param name="ids">The season's.</param>
    public static TakenList Fixtures(SourceText source, FixtureOptions options, NaturalIds ids)
    {
        var list = FixtureReader.Read(source, options);
        var update = FixtureUpdate.Compare([], list, options.Answers);
        return new(list.Name, [.. list.Questions, .. update.Questions], list.Problems, list.IsBlocked, update.Notes, FixtureImport.Edit(list, update, row => new MatchId(ids.Of("match", row.NaturalKey))));
    }

    /// <inheritdoc cref="Fixtures"/>
    public static TakenList Events(SourceText source, EventReading options, NaturalIds ids)
    {
        var list = EventReader.Read(source, options);
        var update = EventUpdate.Compare([], [], list, options.Answers);
        var given = new Dictionary<string, int>(StringComparer.Ordinal);
        var edit = EventImport.Edit(list, update,
            (row, days) => new EventId(Id("event", Day(days.First), Day(days.Last), row.Title, row.Part, row.For, row.Place)),
            (row, day) => new TestDayId(Id("test-day", Day(day), row.Battery, row.Part, row.For)));
        return new(list.Name, [.. list.Questions, .. update.Questions], list.Problems, list.IsBlocked, [], edit);

        // What a list has twice, line for line alike, is two things.
        string Id(params string?[] key)
        {
            var id = ids.Of(key[0]!, [.. key.Skip(1).Select(part => part ?? "")]);
            var times = given[id] = given.GetValueOrDefault(id) + 1;
            return times == 1 ? id : ids.Of(id, times.ToString(CultureInfo.InvariantCulture));
        }
    }

    /// <inheritdoc cref="ListFiles.Tell(string, IReadOnlyList{Question}, IReadOnlyList{Problem}, bool, Answers, Terminal, string)"/>
    public Exit Tell(Answers answers, Terminal terminal)
    {
        foreach (var note in Notes) terminal.Complain("list.note", Name, note);
        return ListFiles.Tell(Name, Questions, Problems, IsBlocked, answers, terminal);
    }
}
