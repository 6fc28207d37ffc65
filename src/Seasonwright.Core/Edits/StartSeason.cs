using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>The first edit of a season: where its weeks lie and whose it is.</summary>
public sealed record StartSeason(DateOnly FirstDay, DayOfWeek WeekStart, ValueList<WeekId> Weeks, TeamCard Team) : SeasonEdit
{
    public override string Describe(Season season) => Sentences.Say("did.start", Team.Name, Weeks.Count, FirstDay);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Before.IsStarted) draft.Refuse("season-started", "frame");
        if (Weeks.Count is < 1 or > Frame.MostWeeks) draft.Refuse("weeks-count", "weeks", Weeks.Count, Frame.MostWeeks);
        if (Weeks.Distinct().Count() != Weeks.Count) draft.Refuse("weeks-twice", "weeks");
        draft.RequirePossible(FirstDay, "firstDay");
        NameTeam.Check(draft, Team);
        if (draft.IsRefused) return;
        draft.Set(SeasonFacets.Frame, default, new Frame(FirstDay, WeekStart, Weeks, ValueList<WeekId>.Empty, ValueList<WeekId>.Empty));
        draft.Set(SeasonFacets.Team, default, Team);
    }
}
