using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Adds a session, or moves or changes it. One athlete can have three of the head coach's practices and three sessions of ours on a day.</summary>
public sealed record SetSession(Session Session) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => season.Session(Session.Id) is { } was
        ? Sentences.Say("did.change-session", SessionWords.Of(was), SessionWords.Changed(was, Session))
        : Sentences.Say("did.add-session", SessionWords.Of(Session));

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, Session);
        foreach (var group in Session.Groups ?? [])
            if (draft.Find(SeasonFacets.Group, group) is null) draft.Refuse("group-unknown", $"group/{group}", group);
        if (Session.Workout is { } workout && draft.Find(SeasonFacets.Workout, workout) is null) draft.Refuse("workout-unknown", $"workout/{workout}", workout);
        if (IsOneTooMany(draft)) draft.Refuse("session-day-full", $"session/{Session.Id}.day", Session.Day, Session.MostADay);
        draft.Set(SeasonFacets.Session, Session.Id, Session);
    }

    internal static void Check(Draft draft, Session session)
    {
        var subject = $"session/{session.Id}";
        draft.RequirePossible(session.Day, $"{subject}.day");
        draft.Limit(session.Name, $"{subject}.name", SeasonDraft.LongestName);
        draft.Limit(session.Place, $"{subject}.place", SeasonDraft.LongestName);
        Within(session.Minutes.Value, Session.LeastMinutes, Session.MostMinutes, "minutes");
        if (session.Groups is { } groups)
        {
            Within(groups.Count, 1, Session.MostGroups, "groups");
            Once(groups, "groups");
        }
        var doses = session.Doses ?? [];
        Within(doses.Count, 0, Session.MostDoses, "doses");
        Once(doses.Select(dose => dose.Quality), "doses");
        foreach (var dose in doses)
        {
            Within(dose.Sets, 1, Dose.MostSets, "doses.sets");
            Within(dose.Top?.Value, Dose.LeastTop, Dose.MostTop, "doses.top");
            Within(dose.Contacts, 1, Dose.MostContacts, "doses.contacts");
            Within(dose.Metres, 1, Dose.MostMetres, "doses.metres");
        }
        var waves = session.Waves ?? [];
        Within(waves.Count, 0, Session.MostWaves, "waves");
        Once(waves.Select(wave => wave.Name), "waves");
        foreach (var wave in waves)
        {
            draft.Require(wave.Name, $"{subject}.waves", SeasonDraft.LongestName);
            if (wave.Group is { } group && !session.IsFor(group)) draft.Refuse("wave-group", $"{subject}.waves", group);
        }

        void Within(int? number, int least, int most, string field)
        {
            if (number < least || number > most) draft.Refuse("session-number", $"{subject}.{field}", number, least, most);
        }

        void Once<T>(IEnumerable<T> items, string field)
        {
            var all = items.ToList();
            if (all.Distinct().Count() != all.Count) draft.Refuse("session-twice", $"{subject}.{field}");
        }
    }

    /// <summary>Whether somebody, of one of the groups named on the day or of none, would have more sessions of this owner than a day holds.</summary>
    private bool IsOneTooMany(SeasonDraft draft)
    {
        if (Session.IsCancelled) return false;
        List<Session> day = [.. draft.Before.AllSessions.Where(other => other.Day == Session.Day && other.IsOurs == Session.IsOurs && !other.IsCancelled && other.Id != Session.Id), Session];
        var whom = day.SelectMany(session => session.Groups ?? []).Distinct().Where(Session.IsFor).ToList();
        return day.Count(session => session.Groups is null) > Session.MostADay || whom.Exists(group => day.Count(session => session.IsFor(group)) > Session.MostADay);
    }
}
