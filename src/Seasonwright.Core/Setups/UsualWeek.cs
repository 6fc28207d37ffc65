using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>What this team does in a normal hard week without a match.</summary>
/// <remarks>
/// The default is 3 practices of 90 min at RPE 5.5, 3 gym sessions of 60 min at RPE 6 and 2 conditioning sessions of 45 min
/// at RPE 7: 3,195 AU. Common practice, no source; every figure is the coach's to change.
/// </remarks>
public sealed record UsualWeek(Sessions Practices, Sessions Gym, Sessions Conditioning)
{
    public static UsualWeek Default { get; } = new(
        new Sessions(3, new Minutes(90), new Rpe(5.5m)),
        new Sessions(3, new Minutes(60), new Rpe(6m)),
        new Sessions(2, new Minutes(45), new Rpe(7m)));

    /// <summary>AU of the whole week.</summary>
    public Load Load => Practices.Load + Gym.Load + Conditioning.Load;
}

/// <summary>So many sessions of one length and effort.</summary>
/// <param name="Count">0 to 14 in the week.</param>
public sealed record Sessions(int Count, Minutes Minutes, Rpe Rpe)
{
    public Load Load => Count * Load.Of(Minutes, Rpe);

    /// <summary>The load of a week's practices; what the week does not say is taken from here.</summary>
    public Load LoadOf(Practices practices) => practices.Count * Load.Of(practices.Minutes ?? Minutes, practices.Rpe ?? Rpe);
}
