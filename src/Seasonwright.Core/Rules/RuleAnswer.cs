using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules;

/// <summary>How a rule stands to a plan.</summary>
public enum RuleState
{
    /// <summary>The team has it off.</summary>
    Off,

    /// <summary>It needs what no plan holds.</summary>
    Waits,

    /// <summary>Nothing in the plan is of its kind: no taper, no journey.</summary>
    NothingToCheck,

    /// <summary>Not enough is entered to judge anything.</summary>
    TooLittle,

    /// <summary>It judged what it could, and found nothing, or said what it found.</summary>
    Checked,
}

/// <summary>What a rule could look at: "nothing found" is said only where something was judged.</summary>
/// <param name="Judged">Places that were judged.</param>
/// <param name="Against">Of those, the places that go against the rule.</param>
/// <param name="Told">Of those, the places that another rule tells already.</param>
/// <param name="NotJudged">Places for which too little is entered.</param>
/// <param name="Missing">What is missing there, in words.</param>
public sealed record RuleAnswer(Rule Rule, RuleState State, int Judged, int Against, int Told, int NotJudged, ValueList<string> Missing)
{
    /// <param name="looks">Null where it was not asked: nothing there feeds it, or it is off.</param>
    /// <param name="heard">Of its breaches, those that no other rule tells.</param>
    internal static RuleAnswer Of(Rule rule, Setup setup, List<Look>? looks, int heard)
    {
        var told = looks ?? [];
        var missing = told.OfType<TooLittle>().ToList();
        var against = told.OfType<Breach>().Count();
        var judged = told.Count - missing.Count;
        var state = !rule.IsOn(setup) ? RuleState.Off
            : looks is null ? RuleState.Waits
            : looks.Count == 0 ? RuleState.NothingToCheck
            : judged == 0 ? RuleState.TooLittle
            : RuleState.Checked;
        return new RuleAnswer(rule, state, judged, against, against - heard, missing.Count,
            missing.Select(look => look.Missing).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).Select(id => RuleWords.Say(id)).ToValueList());
    }
}
