using System.Collections.Immutable;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>
/// Whose days a rule looks at: one athlete of each group that a session is for, where groups differ, else one for all. One cause is
/// told once, and of whom where it is not of everyone.
/// </summary>
internal sealed class Athletes
{
    private readonly AthleteDays ofNoGroup;
    private readonly AthleteDays[] everyone;
    private readonly ImmutableArray<AthleteDays> ofGroups;

    public Athletes(Season season, ImmutableArray<Session> sessions)
    {
        var groups = season.Groups.ToDictionary(line => line.Id);
        ofNoGroup = new AthleteDays(season.Days!.Value, null, sessions);
        everyone = [ofNoGroup];
        ofGroups = [.. sessions.SelectMany(session => session.Groups ?? []).Distinct().OrderBy(group => group.Text, StringComparer.Ordinal)
            .Select(group => new AthleteDays(season.Days!.Value, groups.GetValueOrDefault(group) ?? new GroupLine(group, group.Text), sessions))];
    }

    /// <summary>Those that a session is for.</summary>
    public AthleteDays[] For(Session session) => ofGroups.Length > 0 ? [.. ofGroups.Where(athlete => athlete.Has(session))] : everyone;

    /// <summary>What a rule says of each, every place once: a breach before what cannot be told, and that before what is fine.</summary>
    public IEnumerable<Look> Looks(Func<AthleteDays, IEnumerable<Look>> judge)
    {
        if (ofGroups.Length == 0) return judge(ofNoGroup);
        var all = judge(ofNoGroup).OfType<Breach>().Select(breach => (breach.Place.About, breach.Code)).ToHashSet();
        return ofGroups.SelectMany(athlete => judge(athlete).Select(look => (Athlete: athlete, Look: look))).GroupBy(said => said.Look.Place.About, StringComparer.Ordinal)
            .SelectMany(place => Merged([.. place], all));
    }

    private IEnumerable<Look> Merged(List<(AthleteDays Athlete, Look Look)> place, HashSet<(string About, string Code)> all)
    {
        var breaches = place.Where(said => said.Look is Breach).Select(said => (said.Athlete, Breach: (Breach)said.Look)).GroupBy(said => said.Breach.Code, StringComparer.Ordinal).ToList();
        if (breaches.Count == 0) return [place.Find(said => said.Look is TooLittle).Look ?? place[0].Look];
        return breaches.Select(code =>
        {
            var worst = code.OrderByDescending(said => said.Breach.Severity).ThenByDescending(said => said.Breach.Size).First().Breach;
            var whose = code.Select(said => said.Athlete.Whose).Distinct(StringComparer.Ordinal).ToList();
            return worst with { Whose = whose.Count == ofGroups.Length && all.Contains((worst.Place.About, worst.Code)) ? null : string.Join(", ", whose) };
        });
    }
}
