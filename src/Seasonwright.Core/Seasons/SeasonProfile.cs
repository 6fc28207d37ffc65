using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>Kinds of season that a brief can begin from.</summary>
public enum SeasonProfile
{
    /// <summary>A match nearly every weekend.</summary>
    WeekendLeague,

    /// <summary>Two matches in most weeks.</summary>
    TwoMatchLeague,

    /// <summary>A few tournaments with months between.</summary>
    Tournaments,

    /// <summary>A school or student squad: exams, holidays, little time.</summary>
    School,

    /// <summary>Four months or less.</summary>
    ShortSeason,
}

/// <summary>What coaches of such seasons usually ask for. Common practice, no source.</summary>
public static class SeasonProfiles
{
    public static Brief Brief(this SeasonProfile profile) => profile switch
    {
        SeasonProfile.TwoMatchLeague => Seasons.Brief.Default with { LargestWeek = new Percent(110), Boldness = Boldness.Careful },
        SeasonProfile.Tournaments => Seasons.Brief.Default with { Boldness = Boldness.Bold, WeeksBetween = 3 },
        SeasonProfile.School => new Brief(new Percent(100), Boldness.Careful, StartLevel.Off, Time: Enum.GetValues<PhaseKind>().Where(phase => phase is not (PhaseKind.Peak or PhaseKind.Transition)).Select(phase => new PhaseTime(phase, 4, 8)).ToValueList()),
        SeasonProfile.ShortSeason => new Brief(new Percent(110), Boldness.Careful, StartLevel.Kept, Tests: 3),
        _ => Seasons.Brief.Default,
    };
}
