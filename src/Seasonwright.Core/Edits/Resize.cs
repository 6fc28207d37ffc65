using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Makes the season longer or shorter at its end. Weeks cut off wait outside with their content and return first.</summary>
/// <param name="Weeks">1 to 60.</param>
/// <param name="NewWeeks">New ids for weeks that did not exist yet; only as many as needed are taken.</param>
public sealed record Resize(int Weeks, ValueList<WeekId> NewWeeks) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.resize", season.Weeks.Length, Weeks);

    internal override void Decide(SeasonDraft draft)
    {
        if (Weeks is < 1 or > Frame.MostWeeks)
        {
            draft.Refuse("weeks-count", "weeks", Weeks, Frame.MostWeeks);
            return;
        }
        var old = draft.Before.Frame;
        var known = old.Weeks.Concat(old.After).ToList();
        var missing = int.Max(0, Weeks - known.Count);
        if (NewWeeks.Count < missing || NewWeeks.Take(missing).Concat(known).Concat(old.Before).Distinct().Count() != missing + known.Count + old.Before.Count)
        {
            draft.Refuse("new-weeks", "newWeeks", missing, NewWeeks.Count);
            return;
        }
        var all = known.Concat(NewWeeks.Take(missing)).ToList();
        draft.SetFrame(old with { Weeks = all.Take(Weeks).ToValueList(), After = all.Skip(Weeks).ToValueList() });
    }
}
