namespace Seasonwright.Core.Rules;

/// <summary>How much of a rule was seen in the text of its sources.</summary>
public enum SourceStatus
{
    /// <summary>The figure or finding was seen.</summary>
    Confirmed,

    /// <summary>The finding was seen; a cut was chosen by the authors of the rulebook.</summary>
    WithWorkingDefault,

    /// <summary>The main point was seen, some figures are from memory.</summary>
    PartlyConfirmed,

    /// <summary>The publication was found, its figures were not in the part that could be read.</summary>
    FromMemory,
}
