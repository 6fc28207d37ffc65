using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>The first edit of a season: where its weeks lie and whose it is.</summary>
public sealed record StartSeason(DateOnly FirstDay, DayOfWeek WeekStart, ValueList<WeekId> Weeks, TeamCard Team) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.start", Team.Name, Weeks.Count, FirstDay);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Before.IsStarted) draft.Refuse("season-started", "frame");
        draft.SetFrame(new Frame(FirstDay, WeekStart, Weeks, ValueList<WeekId>.Empty, ValueList<WeekId>.Empty));
        NameTeam.Check(draft, Team);
        draft.Set(SeasonFacets.Team, default, Team);
    }
}
