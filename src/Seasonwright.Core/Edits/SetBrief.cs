using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Says what is asked of a proposed year; none takes it back to the defaults.</summary>
public sealed record SetBrief(Brief? Brief) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say(Brief is null ? "did.clear-brief" : "did.set-brief");

    internal override void Decide(SeasonDraft draft)
    {
        if (Brief is not { } brief)
        {
            draft.Remove(SeasonFacets.Brief, default);
            return;
        }
        Check(draft, brief);
        draft.Set(SeasonFacets.Brief, default, brief);
    }

    internal static void Check(Draft draft, Brief brief)
    {
        Within(draft, "brief.largestWeek", brief.LargestWeek.Value, Brief.LeastWeek, Brief.MostWeek);
        Within(draft, "brief.weeksBetween", brief.WeeksBetween, Brief.LeastWeeksBetween, Brief.MostWeeksBetween);
        Within(draft, "brief.tests", brief.Tests, 0, Brief.MostTests);
        if (brief.Tapers is { } tapers && tapers.Select(taper => taper.Match).Distinct().Count() < tapers.Count) draft.Refuse("brief-twice", "brief.tapers");
        if (brief.Time is { } times && times.Select(time => time.Phase).Distinct().Count() < times.Count) draft.Refuse("brief-twice", "brief.time");
        foreach (var time in brief.Time ?? [])
        {
            Within(draft, "brief.time.days", time.Days, PhaseTime.LeastDays, PhaseTime.MostDays);
            Within(draft, "brief.time.hours", time.Hours, PhaseTime.LeastHours, PhaseTime.MostHours);
        }
    }

    private static void Within(Draft draft, string field, int? number, int least, int most)
    {
        if (number is { } said && (said < least || said > most)) draft.Refuse("brief-number", field, said, least, most);
    }
}
