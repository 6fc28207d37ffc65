using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Tests.Rules;
using static Seasonwright.Core.Tests.Squad.AnyPlayer;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>
/// A player back from a national team, and what the coach is told. Loads are counted by hand: the plan's weeks aim at 600 AU and hold a match of 100, three practices of
/// 90 min at 5.5 and what is named. What to do first is common practice, no source.
/// </summary>
public class ComingBackTests
{
    /// <summary>Practice on Monday, Tuesday and Thursday; legs (55 min at 7) on Wednesday of week 1 and Tuesday of week 2, intervals on its Monday.</summary>
    private const string Weeks = "C60/6(p124,L3) C60/6(p124,I1,L2)";

    private static readonly DaySpan Away = new(Plans.Day(1, 1), Plans.Day(1, 7));

    private static ComingBack? In(int week, OutsideLoad? load, DaySpan? days = null) => Back(week, Ida.AwayFor(AbsenceKind.NationalTeam, days ?? Away, load));

    private static ComingBack? Back(int week, Player player) => Plans.Of(Weeks) is var season ? ComingBack.In(player, season, Plans.Team(), season.Weeks[week - 1]) : null;

    private static string Said(ComingBack back) => string.Join(", ", back.First.Select(fit => $"{fit.Session.Kind} {fit.Kind} {fit.Instead}{fit.MostMinutes?.Value}".TrimEnd()));

    /// <summary>The squad: 3 x 495 for practice, 385 for legs, the match: 1,970.</summary>
    [Fact]
    public void Both_loads_are_of_the_same_days()
    {
        var back = In(2, OutsideLoad.Of(new Minutes(90), new Rpe(4)))!;
        Assert.Equal((Plans.Day(2, 1), Away, 7 * 360, 3 * 495 + 385 + 100), (back.Day, back.Counted, back.Outside!.Value.Au, back.Squad!.Value.Au));
    }

    /// <summary>On Wednesday the squad has 385 for legs; 110 % of it are 423.5, 80 % are 308.</summary>
    [Theory]
    [InlineData(424, BackAdvice.Lighter)]
    [InlineData(423, BackAdvice.AsSquad)]
    [InlineData(308, BackAdvice.AsSquad)]
    [InlineData(307, BackAdvice.More)]
    public void A_tenth_more_than_the_squad_begins_lighter_and_less_than_four_fifths_makes_up(int outside, BackAdvice advice)
    {
        var back = In(1, OutsideLoad.Of(new Load(outside)), DaySpan.Of(Plans.Day(1, 3)))!;
        Assert.Equal((385, advice), (back.Squad!.Value.Au, back.Advice));
    }

    [Fact]
    public void Who_did_more_begins_with_a_small_dose_an_easy_session_and_half_a_practice()
    {
        Assert.Equal("Intervals Replaced Recovery, Practice Modified 45, LowerStrength Replaced SmallDose, Practice AsPlanned", Said(In(2, OutsideLoad.Of(new Minutes(90), new Rpe(6)))!));
        Assert.Equal("Intervals AsPlanned, Practice AsPlanned, LowerStrength AsPlanned, Practice AsPlanned", Said(In(2, OutsideLoad.Of(new Load(290)))!));
    }

    [Fact]
    public void What_nobody_told_is_asked_for_and_nothing_is_changed()
    {
        var back = In(2, null)!;
        Assert.Equal((BackAdvice.Ask, null), (back.Advice, back.Outside));
        Assert.DoesNotContain(back.First, fit => fit.Kind != FitKind.AsPlanned);
    }

    [Fact]
    public void A_restriction_stays_what_it_is()
    {
        var player = Ida.AwayFor(AbsenceKind.NationalTeam, Away, OutsideLoad.Of(new Minutes(90), new Rpe(6))).Reported(Availability.Out, Plans.Day(2, 2));
        Assert.Equal(BackAdvice.Lighter, Back(2, player)!.Advice);
        // Less than the squad did, and restricted: no word of adding anything.
        foreach (var standing in new[] { Availability.Out, Availability.Modified(Restrictions.None) })
            Assert.Equal(BackAdvice.Ask, Back(2, Ida.AwayFor(AbsenceKind.NationalTeam, Away, OutsideLoad.Of(new Load(10))).Reported(standing, Plans.Day(2, 2)))!.Advice);
        Assert.All(Back(2, player)!.First.Where(fit => fit.Session.Day == Plans.Day(2, 2)), fit => Assert.Equal(FitKind.NotAtAll, fit.Kind));
    }

    [Fact]
    public void It_is_told_in_the_week_of_the_first_two_days()
    {
        Assert.Null(In(1, null));
        Assert.Null(In(2, null, new(Plans.Day(1, 1), Plans.Day(1, 5))));
        Assert.NotNull(In(1, null, new(Plans.Day(1, 1), Plans.Day(1, 5))));
        Assert.NotNull(In(2, null, new(Plans.Day(1, 1), Plans.Day(1, 6))));
        // Away again at once: not back.
        Assert.Null(Back(2, Ida.AwayFor(AbsenceKind.NationalTeam, Away).AwayFor(AbsenceKind.SecondClub, new(Plans.Day(2, 1), Plans.Day(2, 7)))));
    }

    [Fact]
    public void A_long_absence_is_compared_by_its_last_seven_days() =>
        Assert.Equal(Away, In(2, null, new(Plans.Day(1, 1).AddDays(-30), Away.Last))!.Counted);

    [Fact]
    public void A_week_that_is_as_the_squads_is_not_told()
    {
        var season = Plans.Of(Weeks);
        Player[] players = [Ida, Of("una", "Sund", "Una").AwayFor(AbsenceKind.NationalTeam, Away), Of("eva", "Holm", "Eva").Reported(Availability.Out, Plans.Day(1, 3)), Of("liv", "Berg", "Liv") with { Memberships = [] }];
        var told = PlayerWeek.Otherwises(players, season, Plans.Team(), season.Weeks[0]).ToList();
        Assert.Equal<PersonId>([new("una"), new("eva")], told.Select(one => one.Player.Id));
        Assert.Equal((7, 0, 0, 5), (told[0].Away.Count(), told[0].Out.Count(), told[1].Away.Count(), told[1].Out.Count()));
        Assert.Equal<PersonId>([new("una"), new("eva")], PlayerWeek.Otherwises(players, season, Plans.Team(), season.Weeks[1]).Select(one => one.Player.Id));
    }
}
