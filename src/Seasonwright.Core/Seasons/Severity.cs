namespace Seasonwright.Core.Seasons;

/// <summary>How serious a finding is.</summary>
public enum Severity
{
    /// <summary>Shown; needs no answer.</summary>
    Caution,

    /// <summary>The plan changes, or a reason is written and kept.</summary>
    Warning,

    /// <summary>Cannot be published until it is changed, or released by those who may.</summary>
    Stop,
}
