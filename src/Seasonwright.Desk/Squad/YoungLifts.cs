using Seasonwright.Core.Rules;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;

namespace Seasonwright.Desk.Squad;

/// <summary>Which tests the young are not asked for. Common practice, no source: the rules that hold where the team is and its licensed staff come first.</summary>
public static class YoungLifts
{
    /// <summary>Repetitions that somebody young is tested with, where the team has no age of its own.</summary>
    public const int Least = 5, Most = 10;

    /// <summary>The age from which anything may be tested: the rulebook's figure where the team has set it, else <see cref="Athlete.GrownUp"/>.</summary>
    public static decimal Age(Setup setup) => Rulebook.OwnAgeOfMaxTests(setup) ?? Athlete.GrownUp;

    /// <summary>Whether somebody is known to be too young on a day to be tested near a maximum. Where no birthday is known nothing is said.</summary>
    public static bool IsYoung(Athlete athlete, DateOnly day, Setup setup) => athlete.AgeOn(day) < Age(setup);

    /// <summary>Whether so many repetitions until none is left are too near a maximum.</summary>
    public static bool IsTooNear(int? repetitions) => repetitions < Least;
}
