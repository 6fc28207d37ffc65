namespace Seasonwright.Core.Rules;

/// <summary>How strong the evidence behind a rule is.</summary>
public enum Evidence
{
    /// <summary>Pooled trials, or a fixed rule or principle of a governing body.</summary>
    Strong,

    /// <summary>Trials or cohorts, limited.</summary>
    Moderate,

    /// <summary>Handbook, consensus or survey.</summary>
    ExpertOpinion,

    /// <summary>Sources disagree, or the method is criticised: never more than a caution unless the team says so.</summary>
    Contested,
}
