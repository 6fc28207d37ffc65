using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Tests.Rules;
using static Seasonwright.Core.Tests.Squad.AnyPlayer;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>Which sessions are a player's, where the player is, and what the day loads. Loads are counted by hand from minutes times RPE.</summary>
public class PlayerDayTests
{
    /// <summary>Tuesday: power for all (40 min at 5), legs of group A (55 at 7), upper body of group B (45 at 6); practice (90 at 5.5) on Monday, Tuesday, Thursday; match on Saturday (100 AU).</summary>
    private const string Week = "C60/6(p124,W2,L2#A,U2#B)";
    private static readonly DateOnly Tuesday = Plans.Day(1, 2), Saturday = Plans.Day(1, 6);

    private static PlayerDay On(Player player, DateOnly day, string plan = Week) => PlayerDay.Of(player, Plans.Of(plan), Plans.Team(), day);

    private static string Kinds(PlayerDay day) => string.Join(' ', day.Fits.Select(fit => fit.Session.Kind));

    [Fact]
    public void A_player_of_a_group_has_the_sessions_of_all_and_of_that_group()
    {
        Assert.Equal("Power LowerStrength Practice", Kinds(On(Ida.InGroup("A", Plans.Monday), Tuesday)));
        Assert.Equal(200 + 385 + 495, On(Ida.InGroup("A", Plans.Monday), Tuesday).Team?.Au);
        Assert.Equal("Power LowerStrength UpperStrength Practice", Kinds(On(Ida.InGroup("A", Plans.Monday).InGroup("B", Plans.Monday), Tuesday)));
    }

    /// <summary>Once told of one group, a day outside it is a day in none; of whom nothing is told, every group's sessions count, so that nothing is missed.</summary>
    [Fact]
    public void Of_whom_no_group_is_told_every_groups_sessions_are_shown()
    {
        Assert.Equal("Power LowerStrength UpperStrength Practice", Kinds(On(Ida, Tuesday)));
        Assert.Equal("Power Practice", Kinds(On(Ida with { Grouped = [new("s")] }, Tuesday)));
        Assert.Equal("Power Practice", Kinds(On(Ida.InGroup("A", Plans.Monday.AddDays(7)), Tuesday)));
        Assert.Equal("Power Practice", Kinds(On(Ida.InGroup("A", Plans.Monday.AddDays(-7), Plans.Monday), Tuesday)));
        Assert.Equal("Power LowerStrength Practice", Kinds(On(Ida.InGroup("A", Plans.Monday, Tuesday), Tuesday)));
        var elsewhere = Ida with { Groups = [new GroupPlace(Ida.Id, new("another-season"), new("A"), Plans.Monday, null)] };
        Assert.Equal("Power LowerStrength UpperStrength Practice", Kinds(On(elsewhere, Tuesday)));
    }

    [Fact]
    public void A_day_on_which_another_squad_leads_holds_none_of_the_teams_sessions()
    {
        Membership second = new(Ida.Id, Team, Plans.Monday, null, new([DayOfWeek.Tuesday], []), "Second team");
        var day = On(Ida with { Memberships = [.. Ida.Memberships, second] }, Tuesday);
        Assert.Equal((Whereabouts.OtherSquad, 0, 0, null), (day.Where, day.Fits.Count, day.Team?.Au, day.Total));
        Assert.Equal(Whereabouts.WithTeam, On(Ida with { Memberships = [.. Ida.Memberships, second] }, Tuesday.AddDays(2)).Where);
        var other = second with { Team = new("another-team"), Squad = null };
        Assert.Equal(Whereabouts.OtherSquad, On(Ida with { Memberships = [.. Ida.Memberships, other] }, Tuesday).Where);
        Assert.Equal(Whereabouts.NoMember, On(Ida with { Memberships = [other] }, Tuesday).Where);
        Assert.Equal(Whereabouts.NoMember, On(Ida with { Memberships = [new(Ida.Id, Team, Plans.Monday, Plans.Monday, LeadingDays.None)] }, Tuesday).Where);
    }

    [Fact]
    public void What_is_done_elsewhere_counts_where_it_is_told_and_is_unknown_where_it_is_not()
    {
        DaySpan days = new(Tuesday, Saturday);
        var told = On(Ida.AwayFor(AbsenceKind.NationalTeam, days, OutsideLoad.Of(new Minutes(90), new Rpe(6m))), Tuesday);
        Assert.Equal((Whereabouts.Absent, 0, 0, 540, 540), (told.Where, told.Fits.Count, told.Team?.Au, told.Outside?.Au, told.Total?.Au));
        var untold = On(Ida.AwayFor(AbsenceKind.NationalTeam, days), Saturday);
        Assert.Equal((true, false, 0, null), (untold.IsAway, untold.IsThere, untold.Team?.Au, untold.Total));
    }

    [Fact]
    public void A_match_counts_as_for_everyone_unless_the_player_is_out()
    {
        Assert.Equal(100, On(Ida, Saturday).Team?.Au);
        var modified = Ida.Reported(Availability.Modified(new Restrictions([RestrictionTag.NoJump])), Plans.Monday);
        Assert.Equal((true, 100), (On(modified, Saturday).IsThere, On(modified, Saturday).Team?.Au));
        var off = On(Ida.Reported(Availability.Out, Plans.Monday), Saturday);
        Assert.Equal((false, 0), (off.IsThere, off.Team?.Au));
    }

    /// <summary>No jump: power becomes upper-body work of at most the 40 minutes there are (at 6); a cap of 60 leaves 20 minutes of practice and 5.5.</summary>
    [Fact]
    public void The_load_is_of_what_is_left_after_the_fit()
    {
        var day = On(Ida.Reported(Availability.Modified(new Restrictions([RestrictionTag.NoJump], new Minutes(60))), Plans.Monday), Tuesday, "C60(p2,W2)");
        Assert.Equal([(FitKind.Replaced, 40, 240), (FitKind.Modified, 20, 110)], day.Fits.Select(fit => (fit.Kind, fit.Minutes!.Value.Value, fit.Load!.Value.Au)));
        Assert.Equal(350, day.Team?.Au);
    }

    [Fact]
    public void Unknown_is_never_zero()
    {
        Assert.Null(On(Ida.Reported(Availability.Modified(Restrictions.None), Plans.Monday), Tuesday).Team);
        Assert.Null(On(Ida, Tuesday, "C60(W2)").Team);
        Assert.Null(On(Ida, Tuesday, "C60(p2)").Team);
        Assert.Null(On(Ida, Plans.Day(2, 2)).Team);
        Assert.Equal(0, On(Ida, Plans.Day(1, 3)).Team?.Au);
        Assert.Equal(200, On(Ida, Tuesday, "C60(0,W2)").Team?.Au);
    }

    /// <summary>Away from day 1 to day 7: back on day 8, told of to day 21.</summary>
    [Theory]
    [InlineData(7, false)]
    [InlineData(8, true)]
    [InlineData(21, true)]
    [InlineData(22, false)]
    public void Who_comes_back_is_told_of_for_a_fortnight(int day, bool told)
    {
        var away = Ida.AwayFor(AbsenceKind.NationalTeam, new(Plans.Monday, Plans.Monday.AddDays(6)));
        Assert.Equal(told, away.BackFrom(Plans.Monday.AddDays(day - 1)).Any());
        // Away again from the next day on, nobody is back until that is over.
        var again = away.AwayFor(AbsenceKind.School, new(Plans.Monday.AddDays(7), Plans.Monday.AddDays(9)));
        Assert.Equal(day is > 10 and <= 22 ? [AbsenceKind.School] : [], again.BackFrom(Plans.Monday.AddDays(day - 1)).Select(absence => absence.Kind));
    }

    /// <summary>540 on two of three days and nothing told of the third is not known; told as free it is 1,080.</summary>
    [Fact]
    public void An_absences_load_is_the_sum_of_its_days_or_not_known()
    {
        OutsideDay first = new(Tuesday, OutsideLoad.Of(new Minutes(90), new Rpe(6m))), second = first with { Day = Tuesday.AddDays(1) };
        var absence = Ida.AwayFor(AbsenceKind.NationalTeam, new(Tuesday, Tuesday.AddDays(2))).Absences[0] with { Loads = new(null, [first, second]) };
        Assert.Equal((null, 540, null), (absence.Au, absence.LoadOn(Tuesday)?.PerDay.Au, absence.LoadOn(Tuesday.AddDays(2))));
        var free = absence with { Loads = absence.Loads with { Others = OutsideLoad.Of(Load.Zero) } };
        Assert.Equal((1_080, 0), (free.Au, free.LoadOn(Tuesday.AddDays(2))?.PerDay.Au));
        Assert.Equal((540, 0, null), (Absence.OutsideLoadOn([free], Tuesday)?.Au, Absence.OutsideLoadOn([free], Tuesday.AddDays(2))?.Au, Absence.OutsideLoadOn([absence], Tuesday.AddDays(2))?.Au));
    }

    [Fact]
    public void A_week_has_each_of_its_days() =>
        Assert.Equal(Enumerable.Range(1, 7).Select(day => Plans.Day(1, day)), PlayerDay.Of(Ida, Plans.Of(Week), Plans.Team(), Plans.Of(Week).Weeks[0]).Select(day => day.Day));
}
