using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Next prescribed load v last load for the same lift and reps; last session's repetitions above target.</summary>
internal static class LoadStepSize
{
    public static readonly Figure MinStep = Figure.Number("min_step", 0.02m, FigureUnit.Share);
    public static readonly Figure MaxStep = Figure.Number("max_step", 0.1m, FigureUnit.Share);
    public static readonly Figure NeedExtraReps = Figure.Number("need_extra_reps", 1, FigureUnit.Count);
    public static readonly Figure NeedSessions = Figure.Number("need_sessions", 2, FigureUnit.Count);
    public static readonly Figure YouthMaxStep = Figure.Number("youth_max_step", 0.1m, FigureUnit.Share);

    public static Rule Rule { get; } = new("load-step-size")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Acsm2009, Sources.Faigenbaum2009],
        Figures = [MinStep, MaxStep, NeedExtraReps, NeedSessions, YouthMaxStep],
        Needs = Needs.Sessions | Needs.Reports,
    };
}
