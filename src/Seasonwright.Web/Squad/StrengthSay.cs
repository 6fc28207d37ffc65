using Seasonwright.Core.Quantities;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;
using Seasonwright.Documents;

namespace Seasonwright.Web.Squad;

/// <summary>What the pages say of maxima and of the sets behind them, every number with its working.</summary>
internal sealed class StrengthSay(Setup setup, DateOnly today)
{
    private readonly LocaleSettings locale = setup.Locale;

    /// <summary>"100 kg x 5", "60 kg at 0.85 m/s", "100 kg x 5 at 0.6 m/s".</summary>
    public string Set(LiftTest test) => (test.Repetitions, test.Velocity) switch
    {
        ({ } repetitions, { } velocity) => Words.Say("strength.set-both", Of(test.Weight), repetitions, WorkWords.Number(velocity, locale)),
        ({ } repetitions, _) => Words.Say("strength.set", Of(test.Weight), repetitions),
        (_, { } velocity) => Words.Say("strength.set-velocity", Of(test.Weight), WorkWords.Number(velocity, locale)),
        _ => Of(test.Weight),
    };

    public string Of(Weight weight) => WorkWords.Of(weight, locale);

    /// <summary>How a maximum is known and worked out.</summary>
    /// <param name="tests">Of the player.</param>
    public string Working(Maximum maximum, IReadOnlyCollection<LiftTest> tests, Exercise exercise) => maximum.From switch
    {
        MaximumFrom.Tested => Words.Say("strength.lifted"),
        MaximumFrom.Repetitions => Estimated(maximum, maximum.Equation!, tests),
        MaximumFrom.Velocity => Words.Say("strength.velocity", WorkWords.Number((setup.Lift(exercise.Id).Threshold ?? Maximum.UsualThreshold(exercise))!.Value, locale),
            maximum is { Least: { } least, Greatest: { } greatest } ? Words.Say("strength.interval", Of(least), Of(greatest)) : Words.Say("strength.interval-none")),
        _ => Words.Say("strength.guessed", WorkWords.Number(exercise.MaxShare!.Value.Value, locale), setup.Exercise(exercise.MaxOf!.Value)!.Name),
    };

    /// <summary>"Thu 15 Jul, 97 days ago"; null where it is today.</summary>
    public string Age(Maximum maximum) => (today.DayNumber - maximum.Day.DayNumber) switch
    {
        0 => Words.Say("squad.today"),
        1 => Words.Say("strength.age-one", maximum.Day.Long(locale)),
        var days => Words.Say(IsOld(maximum) ? "strength.age-old" : "strength.age", maximum.Day.Long(locale), days),
    };

    public bool IsOld(Maximum maximum) => today.DayNumber - maximum.Day.DayNumber > Maximum.FreshDays;

    /// <summary>The short mark of a maximum that nobody lifted; null for one that was.</summary>
    public static string? Mark(Maximum maximum) => maximum.From == MaximumFrom.Tested ? null : Words.Say($"strength.mark.{maximum.From}");

    /// <summary>The set behind an estimate is the one of its day of which the equation makes most.</summary>
    private string Estimated(Maximum maximum, RepMaxEquation equation, IReadOnlyCollection<LiftTest> tests)
    {
        var set = LiftTest.Standing(tests.Where(test => test.Exercise == maximum.Exercise && test.Day == maximum.Day)).Where(test => test.Repetitions is > 1 and <= RepMaxEquation.Most)
            .MaxBy(test => equation.OneRepMax((double)test.Weight.Kilograms, test.Repetitions!.Value))!;
        var spread = RepMaxSpread.Of((double)set.Weight.Amount, set.Repetitions!.Value);
        var told = Words.Say("strength.estimated", Set(set), equation.Formula, $"{equation.Author} {equation.Year}", $"{Tenth(spread.Least)} – {Tenth(spread.Median)} – {Of(maximum.Greatest!)}");
        return set.Repetitions > RepMaxEquation.Dependable ? $"{told} {Words.Say("strength.many-repetitions", RepMaxEquation.Dependable)}" : told;
    }

    private string Tenth(double amount) => WorkWords.Number(Math.Round((decimal)amount, 1, MidpointRounding.AwayFromZero), locale);
}
