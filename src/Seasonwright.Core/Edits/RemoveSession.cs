using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Removes a session. One that is only called off is cancelled instead, and stays to be seen.</summary>
public sealed record RemoveSession(SessionId Session) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.remove-session", season.Session(Session) is { } session ? SessionWords.Of(session) : Session);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Session, Session) is null) draft.Refuse("session-unknown", $"session/{Session}", Session);
        draft.Remove(SeasonFacets.Session, Session);
    }
}
