using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Flags set by medical role or volunteered by the athlete in a private form: pregnancy or after birth, suspected low energy availability, repeated bone stress injury, new heart symptoms, other medical caution.</summary>
internal static class HealthPointer
{
    public static readonly Figure StopFlags = Figure.Words("stop_flags", "pregnancy_or_postpartum", "heart_symptom");
    public static readonly Figure PointerFlags = Figure.Words("pointer_flags", "low_energy_suspected", "repeat_bone_stress", "other");
    public static readonly Figure VisibleTo = Figure.Words("visible_to", "medical", "athlete");

    public static Rule Rule { get; } = new("health-pointer")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Stop,
        Evidence = Evidence.Strong,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Stellingwerff2023, Sources.OlympicMedicalCode2016],
        Figures = [StopFlags, PointerFlags, VisibleTo],
        Needs = Needs.Availability,
        IsFixed = true,
        Releasers = [StaffRole.Doctor],
    };
}
