using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Strength;

/// <summary>
/// How much of the known maximum a day has, as the first set tells: 1 for all of it. The rest of the session follows it. Held to five per cent either way, for one set says
/// little and a day changes little; a set that tells of more is for the coach to look at. Common practice, no source for the bounds.
/// </summary>
public static class DayShare
{
    public const decimal Least = 0.95m, Most = 1.05m;

    /// <summary>From the repetitions that were left: the maximum that the table gives for them, against the known one.</summary>
    /// <param name="lifted">Weight of the set.</param>
    /// <param name="repetitions">Done.</param>
    /// <param name="left">Repetitions that were left, as told.</param>
    /// <returns>Null where the table does not reach as far.</returns>
    public static decimal? OfReserve(Weight lifted, int repetitions, int left, Weight maximum) =>
        RepTable.Textbook.Percent(repetitions, left) is { } percent ? Held(lifted.Kilograms / percent * 100 / maximum.Kilograms) : null;

    /// <summary>From the velocity of the fastest repetition: the load at which the profile has that velocity, against the one that was lifted.</summary>
    /// <param name="velocity">Metres a second, above 0.</param>
    /// <returns>Null where the profile has no load for it.</returns>
    public static decimal? OfVelocity(VelocityProfile profile, double lifted, double velocity) =>
        profile.VelocityOnLoad.XAt(velocity) is > 0 and var usual ? Held((decimal)(lifted / usual)) : null;

    private static decimal Held(decimal share) => Math.Clamp(share, Least, Most);
}
