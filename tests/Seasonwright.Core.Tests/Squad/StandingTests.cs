using Seasonwright.Core.Quantities;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Tests.Squad;

public class StandingTests
{
    private static readonly Reporter Pell = new(ReporterRole.Therapist, true, "Pell");
    private static readonly Reporter Coach = new(ReporterRole.Coach, false);
    private static readonly Availability NoJump = Availability.Modified(new([RestrictionTag.NoJump]));

    /// <summary>A physio's message at 07:00 and the week after it.</summary>
    [Fact]
    public void A_restriction_holds_from_the_message_to_the_next_one_of_a_clinician()
    {
        var message = Of(NoJump, Pell, 0, review: 3);
        var coachTightens = Of(Availability.Modified(new([RestrictionTag.NoJump, RestrictionTag.NoSprint], new Minutes(30))), Coach, 1);
        var coachLoosens = Of(Availability.Full, Coach, 2);
        var cleared = Of(Availability.Full, Pell, 4);
        AvailabilityReport[] all = [message, coachTightens, coachLoosens, cleared];

        Assert.Equal(Availability.Full, On(all, -1).Availability);
        Assert.Equal(NoJump, On([message], 0).Availability);
        Assert.Equal(coachTightens.Availability, On(all, 1).Availability);
        Assert.Equal(coachTightens.Availability, On(all, 3).Availability);
        Assert.Equal((false, true), (On([message], 3).IsReviewOverdue, On([message], 4).IsReviewOverdue));
        Assert.Equal((coachTightens.Availability, true), (On([message, coachTightens, coachLoosens], 30).Availability, On([message, coachTightens, coachLoosens], 30).IsReviewOverdue));
        Assert.Equal((Availability.Full, null), (On(all, 4).Availability, On(all, 4).ReviewOn));
    }

    /// <summary>Who may loosen: role, licensed, named, whether it does.</summary>
    [Theory]
    [InlineData(ReporterRole.Doctor, true, "Dr Wexcombe", true)]
    [InlineData(ReporterRole.Therapist, true, "Pell", true)]
    [InlineData(ReporterRole.Other, true, "Orrin", true)]
    [InlineData(ReporterRole.Doctor, true, null, false)]
    [InlineData(ReporterRole.Therapist, true, "  ", false)]
    [InlineData(ReporterRole.Therapist, false, "A student", false)]
    [InlineData(ReporterRole.Coach, false, "Ines Marlow", false)]
    [InlineData(ReporterRole.Athlete, false, "Ida Norlund", false)]
    [InlineData(ReporterRole.Other, false, "A parent", false)]
    public void Only_a_named_licensed_clinician_loosens(ReporterRole role, bool licensed, string? name, bool loosens)
    {
        var later = Of(Availability.Full, new Reporter(role, licensed, name), 1);
        var before = Of(Availability.Out, Pell, 0);
        Assert.Equal(loosens ? Availability.Full : Availability.Out, On([before, later], 2).Availability);
        Assert.Equal(!loosens, On([before], 1).IsLoosenedWithoutRight(later));
    }

    [Fact]
    public void Two_clinicians_at_one_instant_both_hold()
    {
        var noSprint = Availability.Modified(new([RestrictionTag.NoSprint]));
        Assert.Equal(Availability.Modified(new([RestrictionTag.NoSprint, RestrictionTag.NoJump])), On([Of(NoJump, Pell, 0), Of(noSprint, new(ReporterRole.Doctor, true, "Dr Wexcombe"), 0)], 0).Availability);
    }

    [Fact]
    public void Upper_body_only_and_lower_body_only_leave_nothing()
    {
        var upper = Availability.Modified(new([RestrictionTag.UpperBodyOnly]));
        var lower = Availability.Modified(new([RestrictionTag.LowerBodyOnly]));
        Assert.Equal(Availability.Out, upper.And(lower));
        Assert.Throws<ArgumentException>(() => Availability.Modified(new([RestrictionTag.LowerBodyOnly, RestrictionTag.UpperBodyOnly])));
    }

    [Fact]
    public void A_cap_of_no_minutes_is_out_and_a_coach_is_no_clinician()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Restrictions([], new Minutes(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Restrictions([(RestrictionTag)99]));
        Assert.Throws<ArgumentException>(() => new Reporter(ReporterRole.Coach, true, "Ines"));
        Assert.Throws<ArgumentException>(() => new Reporter(ReporterRole.Doctor, true, new string('x', 81)));
    }

    [Fact]
    public void Restrictions_are_told_in_plain_words_in_the_order_of_the_list() => Assert.Equal(
        "no loaded knee flexion past 90°, no sprint, no jump, at most 30 minutes",
        string.Join(", ", new Restrictions([RestrictionTag.NoJump, RestrictionTag.NoSprint, RestrictionTag.NoJump, RestrictionTag.NoLoadedKneeFlexionPast90], new Minutes(30)).InWords()));

    /// <summary>No field of a report, of a person or of an absence can hold a diagnosis: the only free texts are names and what stands on the shirt.</summary>
    [Fact]
    public void There_is_no_room_for_a_diagnosis()
    {
        Assert.Equal("Name", string.Join(", ", Texts(typeof(Reporter))));
        Assert.Equal("Family, Given, Name, Number", string.Join(", ", Texts(typeof(Athlete))));
        Assert.All([typeof(AvailabilityReport), typeof(Restrictions), typeof(Availability), typeof(Absence)], type => Assert.Empty(Texts(type)));

        static IEnumerable<string> Texts(Type type) => type.GetProperties().Where(property => property.PropertyType == typeof(string)).Select(property => property.Name).Order(StringComparer.Ordinal);
    }

    private static Standing On(IEnumerable<AvailabilityReport> reports, int day) => Standing.On(reports, AnySquad.Monday.AddDays(day));

    private static AvailabilityReport Of(Availability availability, Reporter by, int day, int? review = null) => new(Guid.NewGuid(), AnySquad.Ida, availability, AnySquad.Monday.AddDays(day),
        review is { } days ? AnySquad.Monday.AddDays(days) : null, by, ReportedHow.Message, new("coach"), AnySquad.Seven.AddDays(day), false);
}
