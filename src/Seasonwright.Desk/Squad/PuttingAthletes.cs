using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Squad;

/// <summary>Adding a player to a team, and changing one.</summary>
public static class PuttingAthletes
{
    /// <param name="gesture">Names a new player, so that a form sent twice makes one.</param>
    /// <returns><see cref="Kept"/>; why not otherwise, every field that is wrong as the refusal's subject, and then nothing is changed.</returns>
    public static async Task<(Answer Answer, PersonId Person)> PutAthleteAsync(this Workspace workspace, TeamId team, Guid gesture, AthleteDraft draft)
    {
        var id = draft.Id ?? new PersonId(gesture.ToString("N"));
        var today = workspace.Today;
        if (Problems(draft, today).ToValueList() is { Count: > 0 } wrong) return (new NotDone(wrong), id);
        var refused = default(Refusal);
        var answer = await Recording.KeepAsync(async () =>
        {
            var roster = await workspace.RosterAsync(team);
            var known = roster.FirstOrDefault(player => player.Id == id);
            if (draft.Id is not null && known is null) return false;
            // What was told stays told as of its day while the years it comes to are the same.
            var training = draft.TrainingYears is not { } years ? null : known?.Athlete.Training is { } told && told.YearsOn(today) == years ? told : (TrainingAge?)new TrainingAge(years, today);
            var athlete = new Athlete(id, draft.Family.Trim(), draft.Given.Trim(), NullIfEmpty(draft.Number), draft.Positions, draft.Born, training);
            // Asked once: who keeps a name that was meant so is not asked again.
            if (!draft.IsAnother && !HasName(known, athlete.Name) && roster.FirstOrDefault(player => player.Id != id && HasName(player, athlete.Name)) is { } same)
            {
                refused = Refusal.Say("athlete-same-name", "another", same.Athlete.Name);
                return true;
            }
            if (!await workspace.Folder.Athletes.PutAsync(StreamIds.Of(team), [(athlete, Memberships(team, draft, id, known))])) return false;
            if (draft.Mass is { } mass && WeighIn.LastOn(known?.Weighings ?? [], today)?.Mass != mass)
                await workspace.Folder.Athletes.AppendAsync(new WeighIn(gesture, id, today, mass, workspace.Clock.GetUtcNow()));
            return true;
        }, draft.Id is null ? "team" : "athlete");
        return (refused is null ? answer : new NotDone(refused), id);
    }

    /// <summary>A player leaves every squad of a team; what was told of them stays until they are erased.</summary>
    /// <param name="last">The last day with the team.</param>
    public static Task<Answer> LeaveSquadAsync(this Workspace workspace, TeamId team, PersonId person, DateOnly last) => Recording.KeepAsync(async () =>
    {
        if (await workspace.PlayerAsync(team, person) is not { } player) return false;
        var mine = player.Memberships.Where(one => one.Team == team).Select(one => one with { From = one.From <= last ? one.From : last, To = one.To <= last ? one.To : last }).ToList();
        return await workspace.Folder.Athletes.PutAsync(StreamIds.Of(team), [(player.Athlete, mine)]);
    }, "athlete");

    /// <summary>Erases a player and everything told of them for good. Ask first.</summary>
    public static Task<Answer> EraseAthleteAsync(this Workspace workspace, TeamId team, PersonId person) => Recording.KeepAsync(async () =>
    {
        if (await workspace.PlayerAsync(team, person) is not null) await workspace.Folder.Athletes.EraseAsync(person);
        return true;
    }, "athlete");

    private static List<Membership> Memberships(TeamId team, AthleteDraft draft, PersonId id, Player? known)
    {
        var leads = known?.MainIn(team)?.Leads ?? LeadingDays.None;
        List<Membership> all = [new(id, team, draft.From, draft.To, leads)];
        if (NullIfEmpty(draft.Second) is { } second)
        {
            var before = known?.Memberships.FirstOrDefault(one => one.Team == team && one.Squad is not null);
            var from = before is not null && before.Squad == second ? before.From : draft.From;
            all.Add(new(id, team, draft.To < from ? draft.From : from, draft.To, new(draft.SecondLeads, before?.Leads.Dates ?? []), second));
        }
        return all;
    }

    private static bool HasName(Player? player, string name) => string.Equals(player?.Athlete.Name, name, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<Refusal> Problems(AthleteDraft draft, DateOnly today)
    {
        if (draft.Family.Trim().Length + draft.Given.Trim().Length == 0) yield return Refusal.Say("athlete-nameless", "family");
        foreach (var (field, text, most) in new[] { ("family", draft.Family, AthleteDraft.LongestName), ("given", draft.Given, AthleteDraft.LongestName), ("number", draft.Number, AthleteDraft.LongestNumber), ("second", draft.Second, AthleteDraft.LongestSquad) })
            if (text?.Trim().Length > most) yield return Refusal.Say("athlete-text-long", field, text.Trim().Length, most);
        if (draft.Positions.Count > AthleteDraft.MostPositions || draft.Positions.Any(position => position.Length > AthleteDraft.LongestPosition))
            yield return Refusal.Say("athlete-positions", "positions", AthleteDraft.MostPositions, AthleteDraft.LongestPosition);
        if (draft.Born is { } born && (born > today || born < today.AddYears(-100))) yield return Refusal.Say("athlete-born", "born", born.Year);
        if (draft.TrainingYears is < 0 or > TrainingAge.Most) yield return Refusal.Say("athlete-training", "training", TrainingAge.Most);
        if (!Frame.PossibleDays.Contains(draft.From)) yield return Refusal.Say("athlete-day", "from");
        if (draft.To is { } to && !Frame.PossibleDays.Contains(to)) yield return Refusal.Say("athlete-day", "to");
        else if (draft.To < draft.From) yield return Refusal.Say("athlete-leaves-early", "to");
    }

    private static string? NullIfEmpty(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
