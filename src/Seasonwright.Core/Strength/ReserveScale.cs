using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Strength;

/// <summary>What an RPE told after a set says of repetitions in reserve.</summary>
/// <remarks>
/// Zourdos MC et al. 2016, J Strength Cond Res 30(1):267-275; Helms ER et al. 2016, Strength Cond J 38(4):42-49. Halves from 7.5 up are
/// from memory; 6.5 stands between its neighbours, which is ours.
/// </remarks>
public static class ReserveScale
{
    /// <summary>Null below 5: little effort, and nobody can tell how many were left.</summary>
    public static ReserveRange? Of(Rpe rpe) => rpe.Value switch
    {
        10m => new(0, 0),
        9.5m => new(0, 0, HasMoreLoad: true),
        9m => new(1, 1),
        8.5m => new(1, 2),
        8m => new(2, 2),
        7.5m => new(2, 3),
        7m => new(3, 3),
        6.5m => new(3, 4),
        >= 5m => new(4, 6),
        _ => null,
    };
}
