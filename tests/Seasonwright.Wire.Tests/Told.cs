using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Wire.Tests;

/// <summary>A season and its team's setup while edits are made on them, one after the other.</summary>
public sealed class Told
{
    public static StartSeason Start { get; } = new(new(2027, 7, 5), DayOfWeek.Monday, Enumerable.Range(1, 52).Select(n => new WeekId($"w{n}")).ToValueList(), new("Harbour Vale"));

    public Season Season { get; private set; } = Season.Empty(new("season"));

    public Setup Setup { get; private set; } = Setup.Empty(new("team"));

    public Club Club { get; private set; } = Club.Empty;

    public Decision Do(Edit edit)
    {
        var decision = edit switch
        {
            SeasonEdit mine => Decider.Decide(Season, mine),
            ClubEdit mine => Decider.Decide(Club, mine),
            _ => Decider.Decide(Setup, (SetupEdit)edit),
        };
        if (decision is not Accepted { Step: var step }) return decision;
        if (edit is SeasonEdit) Season = Season.With(step);
        else if (edit is ClubEdit) Club = Club.With(step);
        else Setup = Setup.With(step);
        return decision;
    }

    /// <summary>After every accepted line of docs/edits.md.</summary>
    public static Told Page()
    {
        var told = new Told();
        told.Do(Start);
        foreach (var line in EditsPage.Lines.Where(line => line.Refusal is null)) Assert.IsType<Accepted>(told.Do(EditLines.Read(line.Line, told.Season, out _)!));
        return told;
    }
}
