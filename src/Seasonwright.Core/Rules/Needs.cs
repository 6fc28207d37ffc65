namespace Seasonwright.Core.Rules;

/// <summary>What a rule cannot be judged without and no plan holds: where it is missing the rule is silent, which is no "fine".</summary>
[Flags]
public enum Needs
{
    None = 0,

    /// <summary>Sessions on their days, with what is in them.</summary>
    Sessions = 1,

    /// <summary>The squad: ages, training age, groups.</summary>
    Squad = 2,

    /// <summary>Who can train, and what is ruled out for whom.</summary>
    Availability = 4,

    /// <summary>Athletes' own reports before training.</summary>
    CheckIns = 8,

    /// <summary>What was done: session RPE, minutes played.</summary>
    Reports = 16,

    /// <summary>Test results and body measures.</summary>
    Results = 32,

    /// <summary>Heat, measured or forecast.</summary>
    Weather = 64,

    /// <summary>Accounts with roles: who may see what.</summary>
    Accounts = 128,

    /// <summary>What is lifted in a session: exercises, patterns, repetitions.</summary>
    Exercises = 256,
}
