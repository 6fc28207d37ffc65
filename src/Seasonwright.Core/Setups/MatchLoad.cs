using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>What a match loads, warm-up included, for the full-game line that planning uses.</summary>
/// <remarks>The defaults, 110 min at RPE 7.5 (825 AU) and a friendly at RPE 5, are examples to be changed per sport. Common practice, no source.</remarks>
public sealed record MatchLoad(Minutes Minutes, Rpe Rpe, Rpe FriendlyRpe)
{
    public static MatchLoad Default { get; } = new(new Minutes(110), new Rpe(7.5m), new Rpe(5m));

    public Load Of(Match match) => match.IsOff ? Load.Zero : Load.Of(Minutes, match.Importance == Importance.Friendly ? FriendlyRpe : Rpe);
}
