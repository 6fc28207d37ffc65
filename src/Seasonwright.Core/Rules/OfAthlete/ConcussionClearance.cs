using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Concussion case open; return step and time entered; symptom reports; clearance document flag by clinician.</summary>
internal static class ConcussionClearance
{
    public static readonly Figure Steps = Figure.Number("steps", 6, FigureUnit.Count);
    public static readonly Figure MinHours = Figure.Number("min_hours", 24, FigureUnit.Hours);
    public static readonly Figure RestFirstH = Figure.Numbers("rest_first_h", FigureUnit.Hours, 24, 48);
    public static readonly Figure ResistFromStep = Figure.Number("resist_from_step", 4, FigureUnit.Count);
    public static readonly Figure ClearanceBeforeStep = Figure.Number("clearance_before_step", 4, FigureUnit.Count);
    public static readonly Figure ClearanceBeforeStep2017 = Figure.Number("clearance_before_step_2017", 5, FigureUnit.Count);
    public static readonly Figure ChildReferralDays = Figure.Number("child_referral_days", 28, FigureUnit.Days);
    public static readonly Figure AdultReferralDays = Figure.Number("adult_referral_days", 14, FigureUnit.Days);

    public static Rule Rule { get; } = new("concussion-clearance")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Stop,
        Evidence = Evidence.Strong,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.McCrory2017, Sources.Patricios2023],
        Figures = [Steps, MinHours, RestFirstH, ResistFromStep, ClearanceBeforeStep, ClearanceBeforeStep2017, ChildReferralDays, AdultReferralDays],
        Needs = Needs.Availability,
        IsFixed = true,
        Releasers = [StaffRole.Doctor],
    };

    /// <summary>A step of the return as it is entered, and what the athlete is to do in it.</summary>
    /// <param name="Step">1 to 6.</param>
    /// <param name="Before">The step before it.</param>
    /// <param name="Hours">Spent in that.</param>
    /// <param name="IsCleared">A clinician has released it.</param>
    /// <param name="IsWorse">Symptoms have become worse.</param>
    /// <param name="HoldsContact">Contact, full training or a match.</param>
    internal readonly record struct Entry(int Step, int Before, decimal Hours, bool IsCleared = false, bool IsWorse = false, bool HoldsContact = false, bool HoldsResistance = false);

    /// <summary>Going back a step is always open.</summary>
    public static Severity? Judge(Entry entry, Figures figures) =>
        !entry.IsCleared && (entry.HoldsContact || entry.Step >= figures.Number(ClearanceBeforeStep))
        || entry.Step > entry.Before && entry.Hours < figures.Number(MinHours)
        || entry.IsWorse && entry.Step >= entry.Before
        || entry.HoldsResistance && entry.Step < figures.Number(ResistFromStep)
            ? Severity.Stop : null;
}
