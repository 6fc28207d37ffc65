using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Tests.Loads;

/// <summary>What kinds of session mean, against the rulebook's terms (heavy_lower, hard session, exposure) written out by hand.</summary>
public class SessionUseTests
{
    private static readonly Setup Team = Setup.Empty(new("team"));

    private static Session Of(SessionKind kind, params Dose[] doses) => new(new("s"), new(2027, 7, 6), DaySlot.Morning, kind, SessionUse.Of(kind).Minutes, SessionUse.Of(kind).Rpe, Doses: doses.Length > 0 ? new(doses) : null);

    [Fact]
    public void Every_kind_has_its_row_and_its_name()
    {
        foreach (var kind in Enum.GetValues<SessionKind>())
        {
            Assert.Equal(kind, SessionUse.Of(kind).Kind);
            Assert.NotEmpty(Sentences.Say($"session.{kind}"));
        }
        // Every quality that is solved, but change of direction, has a kind of its own.
        Assert.Equal(
            Enum.GetValues<QualityKind>().Except([QualityKind.Other, QualityKind.ChangeOfDirection]),
            Enum.GetValues<SessionKind>().SelectMany(kind => SessionUse.Of(kind).Qualities).Distinct().Order());
    }

    [Fact]
    public void Practices_are_as_in_the_usual_week()
    {
        var sessions = new Sessions(4, new Minutes(75), new Rpe(6));
        var team = Team.With(Assert.IsType<Accepted>(Decider.Decide(Team, new SetUsualWeek(new UsualWeek(sessions, sessions, sessions)))).Step);
        Assert.Equal(new Load(450), SessionUse.Of(SessionKind.Practice, team).Load);
        Assert.Equal(new Load(495), SessionUse.Of(SessionKind.Practice, Team).Load);
        Assert.Equal(SessionUse.Of(SessionKind.Power), SessionUse.Of(SessionKind.Power, team));
    }

    /// <summary>heavy_lower: three working sets and more at 80 % and more, or tagged by the coach, which the kind does.</summary>
    [Theory]
    [InlineData(SessionKind.LowerStrength, null, null, true)]
    [InlineData(SessionKind.Hypertrophy, null, null, true)]
    [InlineData(SessionKind.SmallDose, null, null, false)]
    [InlineData(SessionKind.SmallDose, 2, 85, false)]
    [InlineData(SessionKind.SmallDose, 4, 90, false)]
    [InlineData(SessionKind.SmallDose, 5, 80, true)]
    [InlineData(SessionKind.Practice, 3, 80, true)]
    [InlineData(SessionKind.Power, 3, 79, false)]
    [InlineData(SessionKind.Power, 4, 85, true)]
    [InlineData(SessionKind.UpperStrength, 5, 90, false)]
    [InlineData(SessionKind.Test, 3, 100, false)]
    public void Heavy_for_the_legs(SessionKind kind, int? sets, int? top, bool isHeavy)
    {
        var session = sets is null ? Of(kind) : Of(kind, new Dose(new("maximum-strength"), sets, new Percent(top!.Value)));
        Assert.Equal(isHeavy, SessionUse.IsHeavy(session, Team));
        Assert.False(SessionUse.IsHeavy(session with { IsCancelled = true }, Team));
    }

    /// <summary>hard: RPE 7 and more, for 20 minutes and more.</summary>
    [Theory]
    [InlineData(7, 20, true)]
    [InlineData(6.5, 90, false)]
    [InlineData(10, 19, false)]
    public void Hard(double rpe, int minutes, bool isHard) =>
        Assert.Equal(isHard, SessionUse.IsHard(Of(SessionKind.Practice) with { Rpe = new Rpe((decimal)rpe), Minutes = new Minutes(minutes) }));

    [Fact]
    public void Doses_say_more_than_the_kind()
    {
        Assert.Equal([QualityKind.MaximumStrength], SessionUse.Exposures(Of(SessionKind.LowerStrength), Team));
        Assert.Equal([QualityKind.Power, QualityKind.Hypertrophy], SessionUse.Exposures(Of(SessionKind.LowerStrength, new(new("power"), Contacts: 40), new(new("hypertrophy"), 6)), Team));
        Assert.Equal([QualityKind.Speed], SessionUse.Exposures(Of(SessionKind.Practice, new Dose(new("speed"), Metres: 200)), Team));
        Assert.Empty(SessionUse.Exposures(Of(SessionKind.Practice), Team));
        Assert.Empty(SessionUse.Exposures(Of(SessionKind.Practice, new Dose(new("gone"))), Team));
        Assert.Empty(SessionUse.Exposures(Of(SessionKind.LowerStrength) with { IsCancelled = true }, Team));
    }

    /// <summary>90 minutes from 18:30 on are over at 20:00.</summary>
    [Theory]
    [InlineData("20:00", null, false)]
    [InlineData("19:59", null, true)]
    [InlineData("17:30", null, false)]
    [InlineData("17:31", null, true)]
    [InlineData("18:30", "keepers", true)]
    [InlineData(null, null, false)]
    public void Sessions_meet_where_somebody_would_have_to_be_in_both(string? start, string? group, bool meets)
    {
        var practice = new Session(new("p"), new(2027, 10, 19), DaySlot.Evening, SessionKind.Practice, new Minutes(90), new Rpe(6), Start: new(18, 30));
        var other = practice with { Id = new("o"), Minutes = new(60), Start = start is null ? null : TimeOnly.Parse(start, System.Globalization.CultureInfo.InvariantCulture), Groups = group is null ? null : [new(group)] };
        Assert.Equal((meets, meets), (practice.Meets(other), other.Meets(practice)));
        Assert.False(practice.Meets(other with { Day = practice.Day.AddDays(1) }));
        Assert.False(practice.Meets(other with { IsCancelled = true }));
        Assert.False((practice with { Groups = [new("wings")] }).Meets(other with { Groups = [new("keepers")] }));
    }
}
