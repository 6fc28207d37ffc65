using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Tests.Squad;

public class PeopleTests
{
    private static readonly TeamId First = new("first"), Second = new("second");

    [Theory]
    [InlineData("2009-10-18", "2027-10-18", 18, false)]
    [InlineData("2009-10-19", "2027-10-18", 17, true)]
    [InlineData("2008-02-29", "2026-02-28", 17, true)]
    [InlineData("2008-02-29", "2026-03-01", 18, false)]
    [InlineData("2028-01-01", "2027-10-18", null, false)]
    [InlineData(null, "2027-10-18", null, false)]
    public void Age_is_in_whole_years(string? born, string day, int? age, bool minor)
    {
        var athlete = new Athlete(AnySquad.Ida, "Norlund", "Ida", "7", ["pivot"], born is null ? null : Day(born), null);
        Assert.Equal((age, minor), (athlete.AgeOn(Day(day)), athlete.IsMinorOn(Day(day))));
    }

    [Theory]
    [InlineData("2027-10-17", 2)]
    [InlineData("2027-10-18", 3)]
    [InlineData("2029-10-17", 4)]
    [InlineData("2029-10-18", 5)]
    [InlineData("2020-01-01", 0)]
    public void Training_age_grows_by_itself(string day, int years) => Assert.Equal(years, new TrainingAge(3, new(2027, 10, 18)).YearsOn(Day(day)));

    /// <summary>A player of the first team who leads with the second on Tuesdays, and with the first on one Tuesday of a cup match.</summary>
    [Theory]
    [InlineData("2027-10-18", "first")]
    [InlineData("2027-10-19", "second")]
    [InlineData("2027-10-26", "first")]
    [InlineData("2027-08-02", null)]
    [InlineData("2027-08-03", "first")]
    [InlineData("2028-06-01", "second")]
    public void Each_day_of_two_squads_is_one_squads_session(string day, string? team)
    {
        Membership[] both =
        [
            new(AnySquad.Ida, Second, new(2027, 9, 1), null, new([DayOfWeek.Tuesday], [])),
            new(AnySquad.Ida, First, new(2027, 8, 3), new(2028, 5, 31), new([], [DaySpan.Of(new(2027, 10, 26))])),
        ];
        Assert.Equal(team, Membership.LeadingOn(both, Day(day))?.Team.Text);
        Assert.Equal(team, Membership.LeadingOn(both.Reverse(), Day(day))?.Team.Text);
    }

    [Fact]
    public void Whose_session_it_is_does_not_depend_on_the_order_and_is_always_one_that_runs() =>
        Gen.Select(Gen.Select(Gen.OneOf(First, Second), Gen.Int[0, 20], Gen.Int[-1, 20], Gen.Enum<DayOfWeek>().List[0, 2], (team, from, length, leads) =>
            new Membership(AnySquad.Ida, team, AnySquad.Monday.AddDays(from), length < 0 ? null : AnySquad.Monday.AddDays(from + length), new(leads.ToValueList(), []))).List[0, 4], Gen.Int[-2, 45]).Sample((all, days) =>
        {
            var day = AnySquad.Monday.AddDays(days);
            var leading = Membership.LeadingOn(all, day);
            Assert.Equal(all.Exists(one => one.Contains(day)), leading is not null);
            Assert.True(leading?.Contains(day) ?? true);
            Assert.Equal(leading?.Team, Membership.LeadingOn(all.AsEnumerable().Reverse(), day)?.Team);
        }, iter: 1_000);

    [Fact]
    public void Outside_load_is_added_up_and_missing_stays_missing()
    {
        var camp = new Absence(Guid.NewGuid(), AnySquad.Ida, AbsenceKind.NationalTeam, new(new(2027, 10, 25), new(2027, 10, 31)), OutsideLoads.Of(OutsideLoad.Of(new Minutes(90), new Rpe(6.5m))), AnySquad.Seven);
        var work = new Absence(Guid.NewGuid(), AnySquad.Ida, AbsenceKind.Work, DaySpan.Of(new(2027, 10, 26)), OutsideLoads.Of(OutsideLoad.Of(new Load(100))), AnySquad.Seven);
        var unknown = new Absence(Guid.NewGuid(), AnySquad.Ida, AbsenceKind.School, DaySpan.Of(new(2027, 10, 27)), OutsideLoads.Unknown, AnySquad.Seven);
        Absence[] all = [camp, work, unknown];
        Assert.Equal(new Load(585), Absence.OutsideLoadOn(all, new(2027, 10, 25)));
        Assert.Equal(new Load(685), Absence.OutsideLoadOn(all, new(2027, 10, 26)));
        Assert.Null(Absence.OutsideLoadOn(all, new(2027, 10, 27)));
        Assert.Null(Absence.OutsideLoadOn(all, new(2027, 11, 1)));
    }

    /// <summary>Source: the international yard and pound of 1959, 1 lb = 0.45359237 kg exactly; 14 lb make a stone.</summary>
    [Theory]
    [InlineData("71.5", BodyMassUnit.Kilogram, "0", "71.5", "71.5 kg")]
    [InlineData("71.50", BodyMassUnit.Kilogram, "0", "71.5", "71.5 kg")]
    [InlineData("141", BodyMassUnit.Pound, "0", "63.95652417", "141 lb")]
    [InlineData("10", BodyMassUnit.Stone, "2", "64.41011654", "10 st 2 lb")]
    public void A_body_mass_keeps_its_unit(string amount, BodyMassUnit unit, string over, string kilograms, string text)
    {
        var mass = new BodyMass(Number(amount), unit, Number(over));
        Assert.Equal((Number(kilograms), text), (mass.Kilograms, mass.ToString()));
    }

    [Theory]
    [InlineData("19.9", BodyMassUnit.Kilogram, "0")]
    [InlineData("251", BodyMassUnit.Kilogram, "0")]
    [InlineData("40", BodyMassUnit.Pound, "0")]
    [InlineData("10", BodyMassUnit.Stone, "14")]
    [InlineData("60", BodyMassUnit.Kilogram, "1")]
    [InlineData("-60", BodyMassUnit.Kilogram, "0")]
    public void A_body_mass_that_cannot_be_is_none(string amount, BodyMassUnit unit, string over) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new BodyMass(Number(amount), unit, Number(over)));

    [Fact]
    public void The_last_weighing_holds_and_a_correction_comes_after_it()
    {
        WeighIn[] all = [At("2027-10-01", 70, 0), At("2027-10-15", 82, 1), At("2027-10-15", 72, 2), At("2027-10-20", 73, 3)];
        Assert.Equal(72, WeighIn.LastOn(all, AnySquad.Monday)?.Mass.Amount);
        Assert.Null(WeighIn.LastOn(all, new(2027, 9, 30)));

        static WeighIn At(string day, decimal kilograms, int hour) => new(Guid.NewGuid(), AnySquad.Ida, Day(day), new(kilograms, BodyMassUnit.Kilogram), AnySquad.Seven.AddHours(hour));
    }

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
