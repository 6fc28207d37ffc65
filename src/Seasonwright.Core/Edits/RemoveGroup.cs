using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Removes a group line with its differences and the sessions and home programmes that are for nobody else.</summary>
public sealed record RemoveGroup(GroupId Group) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.remove-group", season.Facts.Find(SeasonFacets.Group, Group)?.Name);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Group, Group) is null) draft.Refuse("group-unknown", $"group/{Group}", Group);
        foreach (var home in draft.Before.HomeProgrammes.Where(home => home.Groups?.Contains(Group) == true)) LeaveHome(draft, home);
        draft.Remove(SeasonFacets.Group, Group);
        foreach (var (subject, _) in draft.Facts.All(SeasonFacets.GroupWeek).Where(fact => fact.Subject.First == Group).ToList())
            draft.Remove(SeasonFacets.GroupWeek, subject);
        foreach (var (subject, _) in draft.Facts.All(SeasonFacets.GroupEmphasis).Where(fact => fact.Subject.First == Group).ToList())
            draft.Remove(SeasonFacets.GroupEmphasis, subject);
        foreach (var session in draft.Before.AllSessions.Where(session => session.Groups?.Contains(Group) == true || session.Waves?.Any(wave => wave.Group == Group) == true)) Leave(draft, session);
    }

    /// <summary>A programme that is for nobody else goes with the group.</summary>
    private void LeaveHome(SeasonDraft draft, HomeProgramme home)
    {
        var others = home.Groups!.Where(group => group != Group).ToValueList();
        if (others.Count == 0 && home.People is null) draft.Remove(SeasonFacets.Home, home.Id);
        else draft.Set(SeasonFacets.Home, home.Id, home with { Groups = others.Count > 0 ? others : null });
    }

    private void Leave(SeasonDraft draft, Session session)
    {
        if (session.Groups is [var only] && only == Group) draft.Remove(SeasonFacets.Session, session.Id);
        else
        {
            draft.Set(SeasonFacets.Session, session.Id, session with
            {
                Groups = session.Groups?.Where(group => group != Group).ToValueList(),
                Waves = session.Waves?.Select(wave => wave.Group == Group ? wave with { Group = null } : wave).ToValueList(),
            });
        }
    }
}
