using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>What the plan does when the season's first day changes.</summary>
public enum RedatePlan
{
    /// <summary>The weeks keep their order and take new dates; test days and sessions shift with them by whole weeks.</summary>
    Moves,

    /// <summary>Each week's content goes to the new week that holds most of its days. A short first week keeps its place before the second.</summary>
    Stays,
}

/// <summary>Gives the season another first day or week start. Matches, events and notes keep their true dates either way; nothing is dropped.</summary>
/// <param name="NewWeeks">New ids for weeks that did not exist yet; only as many as needed are taken. None are needed when the plan moves.</param>
public sealed record Redate(DateOnly FirstDay, DayOfWeek WeekStart, RedatePlan Plan, ValueList<WeekId> NewWeeks) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say(Plan == RedatePlan.Moves ? "did.redate-moves" : "did.redate-stays", FirstDay);

    internal override void Decide(SeasonDraft draft)
    {
        draft.RequirePossible(FirstDay, "firstDay");
        if (draft.IsRefused) return;
        var old = draft.Before.Frame;
        var grid = new Calendar.WeekGrid(FirstDay, WeekStart, old.Weeks.Count);
        if (Plan == RedatePlan.Moves)
        {
            draft.SetFrame(old with { FirstDay = FirstDay, WeekStart = WeekStart });
            ShiftDays(draft, -7 * grid.ShiftFrom(old.Grid));
            return;
        }

        var shift = grid.ShiftFrom(old.Grid);
        var known = old.Known.ToList();
        var firstKnown = 1 - old.Before.Count + shift;
        var number = int.Min(firstKnown, 1);
        var last = int.Max(firstKnown + known.Count - 1, old.Weeks.Count);
        var missing = last - number + 1 - known.Count;
        if (NewWeeks.Count < missing || NewWeeks.Take(missing).Concat(known).Distinct().Count() != last - number + 1)
        {
            draft.Refuse("new-weeks", "newWeeks", missing, NewWeeks.Count);
            return;
        }
        var fresh = NewWeeks.Take(missing).ToList();
        var all = fresh.Take(int.Max(0, firstKnown - number)).Concat(known).Concat(fresh.Skip(int.Max(0, firstKnown - number))).ToList();
        var before = 1 - number;
        draft.SetFrame(new Frame(FirstDay, WeekStart,
            all.Skip(before).Take(old.Weeks.Count).ToValueList(),
            all.Take(before).ToValueList(),
            all.Skip(before + old.Weeks.Count).ToValueList()));
    }

    /// <summary>Whole weeks, so that a Thursday stays a Thursday whatever the week start.</summary>
    private static void ShiftDays(SeasonDraft draft, int days)
    {
        foreach (var (id, test) in draft.Before.Facts.All(SeasonFacets.TestDay))
        {
            var day = test.Day.AddDays(days);
            draft.RequirePossible(day, $"test/{id}.day");
            SetTestDay.Write(draft, test with { Day = day });
        }
        foreach (var (id, session) in draft.Before.Facts.All(SeasonFacets.Session))
        {
            var day = session.Day.AddDays(days);
            draft.RequirePossible(day, $"session/{id}.day");
            draft.Set(SeasonFacets.Session, id, session with { Day = day });
        }
    }
}
