using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>What a proposed session gives each of its qualities, in the units of the work. Common practice, no source; the rules' limits are named.</summary>
internal static class WeekDoses
{
    /// <summary>heavy-lower-before-match, small_dose_sets: so many heavy sets three days before a match.</summary>
    private const int SetsThreeBefore = 6;

    public static ValueList<Dose> Of(WeekProblem problem, WeekSession session, Setup setup) =>
    [
        .. from quality in session.Qualities
           let known = setup.Qualities.FirstOrDefault(one => one.Kind == quality)
           where known is not null
           select Of(problem, session, quality, known.Id),
    ];

    private static Dose Of(WeekProblem problem, WeekSession session, QualityKind quality, QualityId id)
    {
        var isOwn = session.Qualities[0] == quality;
        var isEasy = problem.Kind is WeekKind.Unloading or WeekKind.Taper or WeekKind.Introductory or WeekKind.ReEntry or WeekKind.Reduced;
        return (quality, session.Kind) switch
        {
            (QualityKind.MaximumStrength, SessionKind.SmallDose) => new(id, 4, new Percent(85)),
            (QualityKind.MaximumStrength, SessionKind.UpperStrength) => session.Rpe <= problem.Limits.RpeAfter ? new(id, 4, new Percent(70)) : new(id, isEasy ? 6 : 8, new Percent(80)),
            (QualityKind.MaximumStrength, SessionKind.LowerStrength) => new(id, Math.Min(isEasy ? SetsThreeBefore : 9, problem.Days[session.Day].ToNext == 3 ? SetsThreeBefore : 9), new Percent(problem.Kind is WeekKind.Introductory or WeekKind.ReEntry ? 80 : 85)),
            (QualityKind.MaximumStrength, _) => new(id, 4, new Percent(80)),
            (QualityKind.Hypertrophy, _) => new(id, isOwn ? isEasy ? 10 : 14 : 5, new Percent(70)),
            (QualityKind.Power, SessionKind.Activation) => new(id, Contacts: 12),
            (QualityKind.Power, _) => new(id, Contacts: isOwn ? isEasy ? 40 : 60 : 30),
            (QualityKind.Speed, _) => new(id, Metres: isEasy ? 160 : 240),
            (QualityKind.Prevention, _) => new(id, isOwn ? 6 : 3),
            _ => new(id),
        };
    }
}
