using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Squad;

/// <summary>Whether somebody can take part in a session, by what binds on its day.</summary>
public enum FitKind
{
    AsPlanned,

    /// <summary>Takes part, without what is ruled out or for fewer minutes.</summary>
    Modified,

    /// <summary>Something else is done instead.</summary>
    Replaced,

    /// <summary>Nothing of it is left.</summary>
    NotAtAll,

    /// <summary>Modified, and nobody said how: to be asked before it begins.</summary>
    ToBeAsked,
}

/// <summary>What becomes of a session for one athlete. A suggestion by kinds of session, which whoever reported the restriction may tighten; common practice, no source.</summary>
/// <param name="Without">What the session holds and is ruled out.</param>
/// <param name="Instead">What is done in its place; null but for one that is replaced.</param>
/// <param name="MostMinutes">Of it; null for all of its minutes.</param>
public sealed record SessionFit(Session Session, FitKind Kind, ValueList<RestrictionTag> Without, SessionKind? Instead, Minutes? MostMinutes)
{
    private const RestrictionTag Knee = RestrictionTag.NoLoadedKneeFlexionPast90, Overhead = RestrictionTag.NoOverhead, Sprint = RestrictionTag.NoSprint, Jump = RestrictionTag.NoJump,
        Turns = RestrictionTag.NoChangeOfDirection, Contact = RestrictionTag.NoContact, NoLegs = RestrictionTag.UpperBodyOnly, NoArms = RestrictionTag.LowerBodyOnly, Spine = RestrictionTag.NoAxialLoad;

    /// <summary>Minutes that are left of it; of what is done instead not more than is usual. Null where nobody said how.</summary>
    public Minutes? Minutes => Kind switch
    {
        FitKind.ToBeAsked => null,
        FitKind.NotAtAll => new(0),
        _ => new(Math.Min(Math.Min(MostMinutes?.Value ?? int.MaxValue, Session.Minutes.Value), Instead is { } kind ? SessionUse.Of(kind).Minutes.Value : int.MaxValue)),
    };

    /// <summary>AU that are left of it, parts that are ruled out not taken off: nobody knows how much they are. Null where nobody said how.</summary>
    public Load? Load => Minutes is { } minutes ? Quantities.Load.Of(minutes, Instead is { } kind ? SessionUse.Of(kind).Rpe : Session.Rpe) : null;

    /// <summary>What becomes of one athlete's sessions of a day, in their order; cancelled ones are left out. A cap of minutes holds for the day.</summary>
    public static ValueList<SessionFit> OfDay(IEnumerable<Session> sessions, Availability availability)
    {
        List<SessionFit> fits = [];
        var left = availability.Restrictions.MostMinutes?.Value;
        foreach (var session in sessions.Where(session => !session.IsCancelled).OrderBy(session => session.Begins))
        {
            var fit = Of(session, availability);
            if (left is { } minutes && fit.Kind is not (FitKind.NotAtAll or FitKind.ToBeAsked))
            {
                if (minutes == 0) fit = fit with { Kind = FitKind.NotAtAll, Instead = null };
                else if (session.Minutes.Value > minutes) fit = fit with { Kind = fit.Kind == FitKind.AsPlanned ? FitKind.Modified : fit.Kind, MostMinutes = new(minutes) };
                left = Math.Max(0, minutes - session.Minutes.Value);
            }
            fits.Add(fit);
        }
        return fits.ToValueList();
    }

    private static SessionFit Of(Session session, Availability availability)
    {
        if (availability.State == AvailabilityState.Out) return new(session, FitKind.NotAtAll, [], null, null);
        if (availability.State == AvailabilityState.Full) return new(session, FitKind.AsPlanned, [], null, null);
        if (availability.Restrictions.IsNone) return new(session, FitKind.ToBeAsked, [], null, null);
        var tags = availability.Restrictions.Tags;
        var (core, parts, instead) = HoldsOf(session.Kind);
        var without = core.Concat(parts).Where(tags.Contains).Distinct().Order().ToValueList();
        if (!core.Any(tags.Contains)) return new(session, without.Count > 0 ? FitKind.Modified : FitKind.AsPlanned, without, null, null);
        var other = instead.Where(kind => HoldsOf(kind) is var its && !its.Core.Concat(its.Parts).Any(tags.Contains)).Select(kind => (SessionKind?)kind).FirstOrDefault();
        return new(session, other is null ? FitKind.NotAtAll : FitKind.Replaced, without, other, null);
    }

    /// <summary>What a kind of session is made of, what it may hold besides, and what may stand for it.</summary>
    private static (RestrictionTag[] Core, RestrictionTag[] Parts, SessionKind[] Instead) HoldsOf(SessionKind kind) => kind switch
    {
        SessionKind.Practice => ([NoLegs, NoArms], [Sprint, Jump, Turns, Contact, Overhead], [SessionKind.UpperStrength, SessionKind.LowerStrength, SessionKind.Recovery]),
        SessionKind.LowerStrength or SessionKind.SmallDose => ([NoLegs, Knee], [Spine], [SessionKind.UpperStrength, SessionKind.Prevention, SessionKind.Recovery]),
        SessionKind.UpperStrength => ([NoArms], [Overhead, Spine], [SessionKind.LowerStrength, SessionKind.Endurance, SessionKind.Recovery]),
        SessionKind.Hypertrophy => ([], [NoLegs, NoArms, Knee, Spine, Overhead], [SessionKind.UpperStrength, SessionKind.LowerStrength, SessionKind.Recovery]),
        SessionKind.Power => ([NoLegs, Jump], [Spine, Overhead, NoArms], [SessionKind.UpperStrength, SessionKind.LowerStrength, SessionKind.Recovery]),
        SessionKind.Speed => ([NoLegs, Sprint], [Turns, Jump], [SessionKind.Endurance, SessionKind.UpperStrength, SessionKind.Recovery]),
        SessionKind.Intervals => ([NoLegs, Sprint], [Turns], [SessionKind.Endurance, SessionKind.UpperStrength, SessionKind.Recovery]),
        SessionKind.Endurance => ([NoLegs], [], [SessionKind.UpperStrength, SessionKind.Recovery]),
        SessionKind.Prevention => ([], [NoLegs, NoArms], []),
        SessionKind.Activation => ([], [NoLegs, Jump, Sprint], []),
        SessionKind.Test => ([NoLegs, NoArms, Jump, Sprint, Knee], [Spine, Overhead, Turns], [SessionKind.Recovery]),
        _ => ([], [], []),
    };
}
