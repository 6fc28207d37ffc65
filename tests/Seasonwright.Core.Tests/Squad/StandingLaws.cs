using CsCheck;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>What binds, whatever was reported by whom and in whatever order.</summary>
public class StandingLaws
{
    private static readonly Gen<DateOnly> Days = Gen.Int[-4, 7].Select(AnySquad.Monday.AddDays);

    [Fact]
    public void Both_holding_is_a_join() => Gen.Select(AnySquad.AnyAvailability, AnySquad.AnyAvailability, AnySquad.AnyAvailability).Sample((a, b, c) =>
    {
        Assert.Equal(a, a.And(a));
        Assert.Equal(a.And(b), b.And(a));
        Assert.Equal(a.And(b).And(c), a.And(b.And(c)));
        Assert.Equal(a, a.And(Availability.Full));
        Assert.Equal(Availability.Out, a.And(Availability.Out));
        Assert.True(a.And(b).IsAtLeastAsTightAs(a));
        if (a.IsAtLeastAsTightAs(b) && b.IsAtLeastAsTightAs(a)) Assert.Equal(a, b);
    }, iter: 2_000);

    [Fact]
    public void Who_is_no_clinician_never_loosens() => Gen.Select(AnySquad.Reports, AnySquad.NotClinical, Days).Sample((reports, more, day) =>
        Assert.True(Standing.On([.. reports, more], day).Availability.IsAtLeastAsTightAs(Standing.On(reports, day).Availability)), iter: 4_000);

    [Fact]
    public void Without_a_clinician_everything_that_has_started_holds() => Gen.Select(AnySquad.NotClinical.List[0, 6], Days).Sample((reports, day) =>
        Assert.All(reports.Where(report => report.From <= day), report => Assert.True(Standing.On(reports, day).Availability.IsAtLeastAsTightAs(report.Availability))), iter: 1_000);

    [Fact]
    public void The_newest_report_binds_whoever_it_is_from() => Gen.Select(AnySquad.Reports, Gen.OneOf(AnySquad.Clinical, AnySquad.NotClinical)).Sample((reports, more) =>
    {
        var last = more with { Recorded = AnySquad.Seven.AddDays(40) };
        Assert.True(Standing.On([.. reports, last], last.From).Availability.IsAtLeastAsTightAs(last.Availability));
    }, iter: 2_000);

    [Fact]
    public void The_newest_clinician_report_alone_holds_until_somebody_tightens() => Gen.Select(AnySquad.Reports, AnySquad.Clinical, AnySquad.NotClinical, Days).Sample((reports, clinical, tighter, day) =>
    {
        var last = clinical with { Recorded = AnySquad.Seven.AddDays(40), From = day };
        var after = tighter with { Recorded = last.Recorded.AddMinutes(1), From = day };
        Assert.Equal(last.Availability, Standing.On([.. reports, last], day).Availability);
        Assert.Equal(last.Availability.And(after.Availability), Standing.On([.. reports, last, after], day).Availability);
    }, iter: 2_000);

    [Fact]
    public void A_report_that_has_not_started_changes_nothing_yet() => Gen.Select(AnySquad.Reports, AnySquad.Clinical, Days).Sample((reports, more, day) =>
        Assert.Equal(Standing.On(reports, day), Standing.On([.. reports, more with { From = day.AddDays(1) }], day)), iter: 1_000);

    [Fact]
    public void The_order_of_arrival_is_of_no_matter() => Gen.Select(AnySquad.Reports, Gen.Int[0, 1_000], Days).Sample((reports, seed, day) =>
    {
        var here = Standing.On(reports, day);
        var there = Standing.On(reports.OrderBy(report => HashCode.Combine(seed, report)), day);
        Assert.Equal(here, there);
    }, iter: 2_000);

    [Fact]
    public void Confirming_and_passing_review_days_loosen_nothing() => Gen.Select(AnySquad.Reports, Days).Sample((reports, day) =>
    {
        var bare = Standing.On(reports.Select(report => report with { IsConfirmed = true, ReviewOn = null }), day);
        Assert.Equal(bare.Availability, Standing.On(reports, day).Availability);
        Assert.False(bare.IsReviewOverdue || bare.IsUnconfirmed);
    }, iter: 1_000);

    [Fact]
    public void What_is_refused_is_just_what_would_not_hold() => Gen.Select(AnySquad.Reports, AnySquad.NotClinical, Days).Sample((reports, more, day) =>
    {
        var last = more with { Recorded = AnySquad.Seven.AddDays(40), From = day };
        Assert.Equal(Standing.On([.. reports, last], day).Availability != last.Availability, Standing.On(reports, day).IsLoosenedWithoutRight(last));
    }, iter: 2_000);
}
