using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>What becomes of a day's sessions for somebody who is restricted. Common practice, no source; a licensed clinician has the last word.</summary>
public class SessionFitTests
{
    private static Session Of(SessionKind kind, int hour = 9, int minutes = 60) => new(new($"{kind}-{hour}"), new(2027, 10, 19), DaySlot.Morning, kind, new Minutes(minutes), new Rpe(6m), Start: new(hour, 0));

    private static SessionFit Single(SessionKind kind, params RestrictionTag[] tags) => Assert.Single(SessionFit.OfDay([Of(kind)], Availability.Modified(new Restrictions(tags))));

    [Theory]
    [InlineData(SessionKind.Speed, RestrictionTag.NoSprint, FitKind.Replaced, SessionKind.Endurance)]
    [InlineData(SessionKind.LowerStrength, RestrictionTag.NoLoadedKneeFlexionPast90, FitKind.Replaced, SessionKind.UpperStrength)]
    [InlineData(SessionKind.Power, RestrictionTag.NoJump, FitKind.Replaced, SessionKind.UpperStrength)]
    [InlineData(SessionKind.Endurance, RestrictionTag.UpperBodyOnly, FitKind.Replaced, SessionKind.UpperStrength)]
    [InlineData(SessionKind.UpperStrength, RestrictionTag.NoOverhead, FitKind.Modified, null)]
    [InlineData(SessionKind.Practice, RestrictionTag.NoContact, FitKind.Modified, null)]
    [InlineData(SessionKind.UpperStrength, RestrictionTag.NoSprint, FitKind.AsPlanned, null)]
    [InlineData(SessionKind.Recovery, RestrictionTag.UpperBodyOnly, FitKind.AsPlanned, null)]
    public void A_restriction_leaves_changes_or_replaces_a_session(SessionKind kind, RestrictionTag tag, FitKind fit, SessionKind? instead)
    {
        var found = Single(kind, tag);
        Assert.Equal((fit, instead), (found.Kind, found.Instead));
        if (fit != FitKind.AsPlanned) Assert.Equal([tag], found.Without);
    }

    /// <summary>Nothing that stands for a session holds what is ruled out.</summary>
    [Fact]
    public void What_is_done_instead_holds_nothing_that_is_ruled_out()
    {
        var tags = Enum.GetValues<RestrictionTag>();
        foreach (var kind in Enum.GetValues<SessionKind>())
            foreach (var (one, other) in tags.SelectMany(one => tags.Select(other => (one, other))).Where(pair => !new Restrictions([pair.one, pair.other]).LeavesNothing))
                if (Single(kind, one, other).Instead is { } instead) Assert.Equal(FitKind.AsPlanned, Single(instead, one, other).Kind);
    }

    [Fact]
    public void Out_is_out_full_is_full_and_modified_without_a_word_is_asked_about()
    {
        Assert.Equal(FitKind.NotAtAll, Assert.Single(SessionFit.OfDay([Of(SessionKind.Recovery)], Availability.Out)).Kind);
        Assert.Equal(FitKind.AsPlanned, Assert.Single(SessionFit.OfDay([Of(SessionKind.Test)], Availability.Full)).Kind);
        Assert.Equal(FitKind.ToBeAsked, Assert.Single(SessionFit.OfDay([Of(SessionKind.Recovery)], Availability.Modified(Restrictions.None))).Kind);
    }

    /// <summary>Forty minutes of a day are thirty of the first session, ten of the second, and nothing of the third.</summary>
    [Fact]
    public void A_cap_of_minutes_holds_for_the_whole_day()
    {
        var day = new[] { Of(SessionKind.Practice, 17, 90), Of(SessionKind.Recovery, 19, 20), Of(SessionKind.UpperStrength, 9, 30) };
        var fits = SessionFit.OfDay(day, Availability.Modified(new Restrictions([], new Minutes(40))));
        Assert.Equal([(FitKind.AsPlanned, null), (FitKind.Modified, 10), (FitKind.NotAtAll, (int?)null)], fits.Select(fit => (fit.Kind, fit.MostMinutes?.Value)));
    }

    [Fact]
    public void Cancelled_sessions_are_left_out() => Assert.Empty(SessionFit.OfDay([Of(SessionKind.Practice) with { IsCancelled = true }], Availability.Full));
}
