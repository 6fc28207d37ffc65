using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Keeps a week for laying out again, or changes its name or phase.</summary>
public sealed record SetTypicalWeek(TypicalWeek Week) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-typical-week", Week.Name);

    internal override void Decide(Draft draft)
    {
        Check(draft, Week);
        draft.Set(SetupFacets.TypicalWeek, Week.Id, Week);
    }

    internal static void Check(Draft draft, TypicalWeek week)
    {
        var subject = $"typicalWeek/{week.Id}";
        draft.Require(week.Name, $"{subject}.name", SeasonDraft.LongestName);
        draft.RequirePossible(week.Days.First, $"{subject}.days");
        if (week.Days.Length > TypicalWeek.MostDays || week.MatchDays.Concat(week.Sessions.Select(session => session.Day)).Any(day => !week.Days.Contains(day))) draft.Refuse("typical-week-days", $"{subject}.days", TypicalWeek.MostDays);
        if (week.Sessions.Count is 0 or > TypicalWeek.MostSessions) draft.Refuse("typical-week-sessions", $"{subject}.sessions", TypicalWeek.MostSessions);
        if (week.Sessions.DistinctBy(session => session.Id).Count() != week.Sessions.Count) draft.Refuse("session-twice", $"{subject}.sessions");
        if (week.Sessions.Any(session => session.IsLocked || session.IsCancelled)) draft.Refuse("typical-week-locked", $"{subject}.sessions");
        foreach (var session in week.Sessions) SetSession.Check(draft, session);
    }
}
