using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Strength;

/// <summary>What a workout gives the team's qualities, as the week and the rulebook count it.</summary>
public static class WorkoutDoses
{
    /// <summary>Hamstrings at the knee, groin, calf, shoulder and neck: what prevention is made of.</summary>
    private static readonly MovementPattern[] OfPrevention = [MovementPattern.KneeFlexion, MovementPattern.HipSides, MovementPattern.LowerLeg, MovementPattern.Shoulder, MovementPattern.Neck];

    /// <summary>
    /// One dose a quality, in the team's order: hard sets and the heaviest of them to what the workout is for (else to what its kind of session is for), prevention
    /// patterns to prevention, contacts to power, metres run to speed. A quality that the team does not plan gets nothing.
    /// </summary>
    public static ValueList<Dose> Of(WorkoutSum sum, Workout workout, SessionKind kind, Setup setup)
    {
        var main = setup.Qualities.FirstOrDefault(quality => quality.Id == workout.Quality) ?? Of(SessionUse.Of(kind).Qualities.FirstOrDefault(QualityKind.MaximumStrength));
        var prevention = Of(QualityKind.Prevention);
        var setsOfPrevention = prevention is null || prevention == main ? 0 : sum.HardSets.Where(pattern => OfPrevention.Contains(pattern.Pattern)).Sum(pattern => pattern.Sets);
        var doses = new Dictionary<QualityId, Dose>();
        Add(main, sum.AllHardSets - setsOfPrevention, dose => dose with { Sets = Bounded(sum.AllHardSets - setsOfPrevention, Dose.MostSets), Top = TopOf(sum) });
        Add(prevention, setsOfPrevention, dose => dose with { Sets = Bounded(setsOfPrevention, Dose.MostSets) });
        Add(Of(QualityKind.Power), sum.Contacts, dose => dose with { Contacts = Bounded(sum.Contacts, Dose.MostContacts) });
        Add(Of(QualityKind.Speed), sum.Metres, dose => dose with { Metres = Bounded(sum.Metres, Dose.MostMetres) });
        return setup.Qualities.Where(quality => doses.ContainsKey(quality.Id)).Select(quality => doses[quality.Id]).Take(Session.MostDoses).ToValueList();

        Quality? Of(QualityKind quality) => setup.Qualities.FirstOrDefault(other => other.Kind == quality);

        void Add(Quality? quality, int amount, Func<Dose, Dose> with)
        {
            if (quality is not null && amount > 0) doses[quality.Id] = with(doses.GetValueOrDefault(quality.Id) ?? new Dose(quality.Id));
        }
    }

    /// <summary>A session with the minutes, up to the next five, and the doses its workout comes to in its week; null where nothing is written for it.</summary>
    public static Session? Into(Session session, Season season, Setup setup)
    {
        if (WorkoutWeek.Of(season, session) is not { } done) return null;
        var sum = WorkoutSum.Of(done, setup.Exercise);
        var doses = Of(sum, done.Workout, session.Kind, setup);
        return session with { Doses = doses.Count > 0 ? doses : null, Minutes = new(Math.Clamp((sum.Minutes + 4) / 5 * 5, Session.LeastMinutes, Session.MostMinutes)) };
    }

    private static Percent? TopOf(WorkoutSum sum) => sum.Top is { } top ? new Percent((int)Math.Clamp(Math.Round(top.Percent, MidpointRounding.AwayFromZero), Dose.LeastTop, Dose.MostTop)) : null;

    private static int Bounded(int amount, int most) => Math.Min(amount, most);
}
