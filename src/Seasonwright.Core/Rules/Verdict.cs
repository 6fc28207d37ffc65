using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>What a rule says to the figures of an athlete: how serious it is, nothing, or that too little is known to say, which is no "fine".</summary>
internal readonly record struct Verdict(Severity? Severity, bool IsTooLittle = false)
{
    public static Verdict TooLittle { get; } = new(null, IsTooLittle: true);
}
