using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Documents.HandOut.HeadCoach;

/// <summary>How hard a week of training will feel to the players, in the head coach's words.</summary>
public enum WeekFeel
{
    Easy,
    Normal,
    Hard,

    /// <summary>Matches and what brings the players from one to the next.</summary>
    MatchOnly,
}

/// <summary>
/// Reads a week as a feel: by its matches, then by its load, so that the word never contradicts the bar beside it on the wall; by its
/// kind only where no load is set. Common practice, no source.
/// </summary>
public static class WeekFeels
{
    /// <summary>Up to this share of a normal hard week, per cent, a week is easy.</summary>
    public const int MostEasy = 60;

    /// <summary>From this share of a normal hard week on, per cent, a week is hard.</summary>
    public const int LeastHard = 90;

    /// <summary>Days with a match from which on a week is matches and what lies between.</summary>
    public const int MatchDaysAlone = 2;

    /// <summary>Null where the week has neither two matches nor a kind nor a load.</summary>
    public static WeekFeel? FeelOf(this Season season, Setup setup, SeasonWeek week)
    {
        var kind = season.KindOf(week.Id);
        if (kind == WeekKind.Congested || season.MatchDays.Count(week.Days.Contains) >= MatchDaysAlone) return WeekFeel.MatchOnly;
        if (season.TargetOf(week.Id)?.PercentOf(setup.ReferenceWeek).Value is { } load) return load <= MostEasy ? WeekFeel.Easy : load >= LeastHard ? WeekFeel.Hard : WeekFeel.Normal;
        return kind switch
        {
            null => null,
            WeekKind.Overload => WeekFeel.Hard,
            WeekKind.Building or WeekKind.Competition => WeekFeel.Normal,
            _ => WeekFeel.Easy,
        };
    }
}
