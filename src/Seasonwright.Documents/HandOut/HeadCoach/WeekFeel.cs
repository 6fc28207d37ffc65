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

/// <summary>Reads a week's kind and load as a feel. Common practice, no source.</summary>
public static class WeekFeels
{
    /// <summary>Up to this share of a normal hard week, per cent, a week without a kind is easy.</summary>
    public const int MostEasy = 60;

    /// <summary>From this share of a normal hard week on, per cent, a week is hard.</summary>
    public const int LeastHard = 90;

    /// <summary>Null where the week has neither a kind nor a load.</summary>
    public static WeekFeel? FeelOf(this Season season, Setup setup, SeasonWeek week)
    {
        var load = season.TargetOf(week.Id)?.PercentOf(setup.ReferenceWeek).Value;
        return season.KindOf(week.Id) switch
        {
            WeekKind.Congested => WeekFeel.MatchOnly,
            WeekKind.Overload => WeekFeel.Hard,
            WeekKind.Building or WeekKind.Competition => load >= LeastHard ? WeekFeel.Hard : WeekFeel.Normal,
            not null => WeekFeel.Easy,
            null when load is null => null,
            null => load <= MostEasy ? WeekFeel.Easy : load >= LeastHard ? WeekFeel.Hard : WeekFeel.Normal,
        };
    }
}
