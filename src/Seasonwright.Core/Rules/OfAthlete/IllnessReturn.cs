using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Athlete status ill; symptom ticks (fever, chest, whole-body aches, breathlessness); days missed; planned sessions.</summary>
internal static class IllnessReturn
{
    public static readonly Figure Ramp = Figure.Numbers("ramp", FigureUnit.Share, 0.5m, 0.6m, 0.75m, 0.9m, 1);
    public static readonly Figure MinRampDays = Figure.Number("min_ramp_days", 2, FigureUnit.Days);
    public static readonly Figure RampFactor = Figure.Number("ramp_factor", 0.5m, FigureUnit.Count);
    public static readonly Figure StopSymptoms = Figure.Words("stop_symptoms", "fever", "chest pain", "breathless at rest", "palpitations", "whole-body aches");

    public static Rule Rule { get; } = new("illness-return")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Stop,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Schwellnus2022, Sources.IllnessNote],
        Figures = [Ramp, MinRampDays, RampFactor, StopSymptoms],
        Needs = Needs.CheckIns | Needs.Availability,
        IsFixed = true,
        Releasers = [StaffRole.Doctor, StaffRole.Physiotherapist],
    };
}
