using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Strength;

/// <summary>What a week makes of a workout that is written for a building week in which its quality is developed.</summary>
/// <param name="Sets">Share of the sets that is done.</param>
/// <param name="Points">Added to the per cent of the maximum.</param>
/// <remarks>
/// Where a source says how much, it is followed: a taper takes 41 to 60 % of the volume and no intensity (Bosquet L et al. 2007, Med Sci
/// Sports Exerc 39(8):1358-1365); an easier week 30 to 50 % by sets, keeping most of the intensity (Rogerson D et al. 2024, Sports Med
/// Open 10:26, a survey; 30 to 50 % from memory); the first week back is held to half (Caterisano A et al. 2019, Strength Cond J
/// 41(3):1-23, figures from memory); strength is kept with a third fewer sets and less as long as they are as heavy (Bickel CS et al.
/// 2011, Med Sci Sports Exerc 43(7):1177-1187, a third of the volume in young adults, from memory). The rest is common practice, no source.
/// </remarks>
public readonly record struct WeekScale(decimal Sets, decimal Points)
{
    private const decimal Maintained = 2m / 3;

    public static WeekScale Of(WeekKind? kind) => kind switch
    {
        WeekKind.Introductory => new(0.65m, -5),
        WeekKind.Overload => new(1.2m, 0),
        WeekKind.Unloading => new(0.6m, -5),
        WeekKind.Taper or WeekKind.Congested => new(0.5m, 0),
        WeekKind.ReEntry or WeekKind.Break or WeekKind.Transition => new(0.5m, -10),
        WeekKind.Reduced => new(0.7m, 0),
        _ => new(1, 0),
    };

    /// <summary>Of a week of the year: its kind, and a third fewer sets where it only keeps up what the workout is for. A quality that the year says nothing of in that week is left as it is.</summary>
    public static WeekScale Of(Season season, SeasonWeek week, QualityId? quality)
    {
        var scale = Of(season.KindOf(week.Id));
        return quality is { } known && season.EmphasisOf(week.Id, known) == Emphasis.Maintain ? scale with { Sets = scale.Sets * Maintained } : scale;
    }
}
