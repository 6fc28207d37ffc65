using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>What a proposed session gives each of its qualities, in the units of the work: as much as its minutes hold (<see cref="SessionWork"/>). Common practice, no source.</summary>
internal static class WeekDoses
{
    private const int APortion = 10;

    public static ValueList<Dose> Of(WeekProblem problem, WeekSession session, Setup setup)
    {
        if (session.Kind == SessionKind.Test) return Named(session, setup, (_, id) => new Dose(id));
        var range = SessionRange.Of(session.Kind);
        var own = SessionRange.Own(session.Kind);
        var portions = Math.Clamp(range.Work.In(session.Minutes - session.Qualities.Where(quality => !own.Contains(quality)).Sum(SessionRange.MinutesToCarry)), 1, range.Work.MostOn(problem, problem.Days[session.Day]));
        return Named(session, setup, (quality, id) => own.Contains(quality) ? Own(problem, session, quality, id, portions) : Carried(problem, session, quality, id));
    }

    private static ValueList<Dose> Named(WeekSession session, Setup setup, Func<QualityKind, QualityId, Dose> dose) =>
    [
        .. from quality in session.Qualities
           let known = setup.Qualities.FirstOrDefault(one => one.Kind == quality)
           where known is not null
           select dose(quality, known.Id),
    ];

    private static Dose Own(WeekProblem problem, WeekSession session, QualityKind quality, QualityId id, int portions) => quality switch
    {
        QualityKind.MaximumStrength => new(id, portions, new Percent(Top(problem, session))),
        QualityKind.Hypertrophy => new(id, portions, new Percent(70)),
        QualityKind.Power => new(id, Contacts: APortion * portions),
        QualityKind.Speed => new(id, Metres: APortion * portions),
        QualityKind.Prevention => new(id, portions),
        _ => new(id),
    };

    private static Dose Carried(WeekProblem problem, WeekSession session, QualityKind quality, QualityId id) => quality switch
    {
        QualityKind.MaximumStrength => new(id, 3, new Percent(80)),
        QualityKind.Hypertrophy => new(id, problem.IsBack ? 3 : 4, new Percent(70)),
        QualityKind.Power => new(id, Contacts: session.Kind == SessionKind.Activation ? 12 : 20),
        QualityKind.Prevention => new(id, 2),
        _ => new(id),
    };

    /// <summary>The heaviest set: light on the day after a match and in a first week back.</summary>
    private static int Top(WeekProblem problem, WeekSession session) =>
        session.Kind == SessionKind.UpperStrength && session.Rpe <= problem.Limits.RpeAfter ? 70
        : problem.IsBack ? 75
        : session.Kind == SessionKind.UpperStrength || problem.Kind is WeekKind.Introductory or WeekKind.ReEntry ? 80
        : 85;
}
