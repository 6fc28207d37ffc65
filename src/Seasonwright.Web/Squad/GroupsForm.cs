using System.Collections.Immutable;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Documents;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Squad;

/// <summary>A player's groups of one season as typed.</summary>
/// <param name="Lines">One for each group of the season.</param>
internal sealed record GroupsForm(SeasonId Season, string? Title, ValueList<GroupTick> Lines)
{
    /// <summary>A group not told of yet is offered from today on, or from the season's nearest day.</summary>
    public static GroupsForm Of(Season season, Player player, DateOnly today)
    {
        var offered = season.Days is not { } days || days.Contains(today) ? today : today < days.First ? days.First : days.Last;
        return new(season.Id, season.Team.Title, season.Groups.Select(line => player.Groups.FirstOrDefault(place => place.Season == season.Id && place.Group == line.Id) is { } place
            ? new GroupTick(line, true, place.From.Iso(), place.To?.Iso() ?? "") : new GroupTick(line, false, offered.Iso(), "")).ToValueList());
    }

    /// <summary>What was ticked and typed; the groups stay as the season names them.</summary>
    public GroupsForm Read(Posted posted) => this with { Lines = Lines.Select(line => new GroupTick(line.Group, posted[Name("in", line)].Length > 0, posted[Name("from", line)], posted[Name("to", line)])).ToValueList() };

    /// <summary>What a field is called: two seasons may name the same group.</summary>
    public string Name(string field, GroupTick line) => $"{field}-{line.Group.Id}-{Season}";

    /// <summary>What cannot be read, by "from-GROUP" and "to-GROUP"; what cannot be is the desk's to say.</summary>
    public ImmutableSortedDictionary<string, string> Problems()
    {
        var wrong = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var line in Lines.Where(line => line.IsIn))
        {
            if (StartForm.DayOf(line.From) is null) wrong[$"from-{line.Group.Id}"] = Words.Say(line.From.Length == 0 ? "new.day-missing" : "new.day-unread", line.From);
            if (line.To.Length > 0 && StartForm.DayOf(line.To) is null) wrong[$"to-{line.Group.Id}"] = Words.Say("new.day-unread", line.To);
        }
        return wrong.ToImmutable();
    }

    /// <summary>What is to be kept; ask <see cref="Problems"/> first.</summary>
    public IReadOnlyList<GroupPlace> Places(PersonId person) => [.. Lines.Where(line => line.IsIn).Select(line => new GroupPlace(person, Season, line.Group.Id, StartForm.DayOf(line.From)!.Value, StartForm.DayOf(line.To)))];
}
