using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Documents.Read.Squads;
using Seasonwright.Store;
using Seasonwright.Store.People;

namespace Seasonwright.Desk.Lists;

/// <summary>
/// The squad list of a team, kept as it was read until the squad is set up. People are rows: no edit, no history, no undo; the list goes
/// with its team. Answers to a squad list name people, so they are not for <see cref="RememberedAnswers"/>, which outlives the team.
/// </summary>
public static class KeptSquads
{
    private static readonly JsonSerializerOptions Lifts = new(JsonSerializerDefaults.Web) { Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    /// <summary>Puts a list in the place of the one kept: everybody but the rows that wait for an answer.</summary>
    /// <returns><see cref="Kept"/> with the number of people; why not otherwise, and then the former list stays.</returns>
    /// <exception cref="ArgumentException">The list has problems.</exception>
    public static async Task<Answer> KeepSquadAsync(this Workspace workspace, TeamId team, SquadList list)
    {
        if (list.Problems.Count > 0) throw new ArgumentException("A list with problems has no rows to keep.", nameof(list));
        var members = list.Taken.Select(row => new SquadMember(row.Family, row.Given, row.Number, row.Positions.Count == 0 ? null : string.Join('/', row.Positions), row.Born, row.Age, row.Mass?.ToString(), row.Height,
            row.Group, row.Remark, JsonSerializer.Serialize(row.Lifts, Lifts))).ToList();
        try
        {
            return await workspace.Folder.Squads.ReplaceAsync(StreamIds.Of(team), members) ? new Kept(members.Count) : new NotDone(Refusal.Say("stream-gone", team.Text));
        }
        catch (StoreTrouble trouble)
        {
            return new CannotKeep(trouble.Message);
        }
    }

    /// <summary>A team's list as it is kept, in its order; empty when there is none.</summary>
    /// <exception cref="StoreTrouble">The disk or the file refuses.</exception>
    public static async Task<ValueList<KeptPlayer>> SquadAsync(this Workspace workspace, TeamId team) =>
        (await workspace.Folder.Squads.OfAsync(StreamIds.Of(team))).Select(member => new KeptPlayer(member.Family, member.Given, member.Number, member.Position, member.Born, member.Age, member.Mass, member.Height,
            member.Group, member.Remark, (JsonSerializer.Deserialize<List<SquadLift>>(member.LiftsJson, Lifts) ?? []).ToValueList())).ToValueList();

    /// <summary>Erases a team's list for good. Ask first.</summary>
    public static async Task<Answer> EraseSquadAsync(this Workspace workspace, TeamId team)
    {
        try
        {
            await workspace.Folder.Squads.EraseAsync(StreamIds.Of(team));
            return new Kept(0);
        }
        catch (StoreTrouble trouble)
        {
            return new CannotKeep(trouble.Message);
        }
    }
}
