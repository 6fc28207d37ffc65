using Seasonwright.Core.Rules;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>One message for one cause, and one finding for weeks side by side.</summary>
public class OneCauseTests
{
    /// <summary>A rule is silent where another has said the same cause, speaks when that one is off, and elsewhere in the season.</summary>
    [Theory]
    [InlineData("heavy-week-in-congestion", "weekly-ramp", "C60/6x2 B80/3/6", "rise caution 3")]
    [InlineData("match-gap-short", "matches-per-week", "C60/3/6", "many caution 1 forced")]
    [InlineData("taper-length", "taper-volume", "B100x2 T95/3!", "short caution 3")]
    [InlineData("taper-length", "taper-intensity-frequency", "B100+s3x2 T80/3!+m1", "rarer caution 3")]
    [InlineData("sprint-exposure-gap", "quality-left-idle", "B60+v2h2 B60+h2 B60+v1h2", "max_speed caution 2")]
    [InlineData("strength-frequency-in-season", "quality-left-idle", "CO: C70+s2h2 C70+h2x5 C70+s1h2", "max_strength caution 2-6")]
    [InlineData("aerobic-upkeep", "quality-left-idle", "B60+a2 B60+s1x5 B60+a2", "aerobic_endurance caution 2-6")]
    [InlineData("aerobic-upkeep", "quality-left-idle", "B60+h2 B60+s1x3 B60+h2", "anaerobic_glycolytic caution 2-4")]
    [InlineData("return-after-break-volume", "weekly-ramp", "C60/6x2 X C80/6", "rise caution 4", "return-after-break-volume.season_start=kept")]
    [InlineData("weekly-ramp", "trailing-four-spike", "B50x4 B70", "spike caution 5")]
    [InlineData("return-after-break-volume", "trailing-four-spike", "C60x4 X C80", "spike caution 6", "return-after-break-volume.season_start=kept; weekly-ramp.on=no", "X45")]
    [InlineData("heavy-lower-before-match", "day-before-match-heavy", "C60/6(p1234,L5)", "content warning 1")]
    [InlineData("heavy-lower-before-match", "hard-days-in-a-row", "C60/6(p24,L5)", "match caution 1", "day-before-match-heavy.on=no")]
    [InlineData("day-before-match-heavy", "hard-days-in-a-row", "C60/6(p24,I5)", "match caution 1")]
    [InlineData("day-after-match-hard", "hard-days-in-a-row", "C60/3@18:00(p1,I4)", "match caution 1")]
    [InlineData("heavy-week-in-congestion", "hard-days-in-a-row", "C60/6(p1) B60/2/6(p1,I34)", "run warning 2")]
    public void The_second_is_silent_where_the_first_has_spoken(string speaks, string silent, string plan, string alone, string figures = "", string off = "X")
    {
        plan = plan.Replace("X", off, StringComparison.Ordinal);
        Assert.Contains(' ', Plans.Say(speaks, plan, figures));
        Assert.Equal(nameof(RuleState.Checked), Plans.Say(silent, plan, figures));
        Assert.Equal(alone, Plans.Say(silent, plan, $"{speaks}.on=no; {figures}"));
    }

    /// <summary>A gentle word elsewhere does not hide a graver one: three matches in seven days, each gap a caution.</summary>
    [Fact]
    public void A_caution_does_not_silence_a_warning()
    {
        Assert.Equal("short caution 2 forced", Plans.Say("match-gap-short", "C60/7@10:00 C60/3@15:00/6@20:00"));
        Assert.Equal("many warning 2 forced", Plans.Say("matches-per-week", "C60/7@10:00 C60/3@15:00/6@20:00"));
    }

    /// <summary>Nothing is called fine that another rule has to tell.</summary>
    [Fact]
    public void What_another_rule_tells_is_said_to_be_told()
    {
        var answer = Rulebook.Check(Plans.Of("C60/3/6"), Plans.Team()).Answers.Single(answer => answer.Rule.Id == "matches-per-week");
        Assert.Equal((1, 1), (answer.Against, answer.Told));
        Assert.EndsWith("; 1 of them told by another rule", RuleText.Of(answer), StringComparison.Ordinal);
    }

    [Fact]
    public void A_silenced_rule_speaks_in_the_weeks_beside() =>
        Assert.Equal("many caution 3 forced", Plans.Say("matches-per-week", "C60/3/6 C60 C60/1/6"));

    /// <summary>Only a taper that is missing hides what is said of it; one that is too long does not.</summary>
    [Fact]
    public void Other_words_of_the_first_hide_nothing()
    {
        const string plan = "B100x2 T95x3 T105/6!";
        Assert.Equal("long warning 3-6", Plans.Say("taper-length", plan));
        Assert.Equal("full caution 3-6", Plans.Say("taper-volume", plan));
    }

    [Fact]
    public void Weeks_side_by_side_are_one_finding_told_by_the_largest()
    {
        var finding = Assert.Single(Rulebook.Check(Plans.Of("GP: B60x2 B70 B84 B97"), Plans.Team()).Findings, finding => finding.Rule.Id == "weekly-ramp");
        Assert.Equal((3, 5, 3), (finding.Place.First, finding.Place.Last, finding.Times));
        Assert.Equal(0.20m, finding.Value);
        Assert.EndsWith("So it is in weeks 3 to 5, most of all in week 4.", finding.Sentence, StringComparison.Ordinal);
        Assert.Equal("week/w3", finding.Key.About);
    }

    /// <summary>What is said of one session hides nothing about another one of the week.</summary>
    [Fact]
    public void One_session_says_nothing_of_another() =>
        Assert.Equal("content warning 1", Plans.Say("day-before-match-heavy", "C60/6(p1234,L5,I5a)"));

    /// <summary>What only some groups have is said of them, what everyone has is said once and of nobody in particular.</summary>
    [Theory]
    [InlineData("heavy-lower-before-match", "C60/6(L5#A)", " For: Group A.")]
    [InlineData("heavy-lower-before-match", "C60/6(L5#A#B)", " For: Group A, Group B.")]
    [InlineData("heavy-lower-before-match", "C60/6(L5,U1#A)", null)]
    [InlineData("day-before-match-heavy", "C60/6(I5#A)", " For: Group A.")]
    [InlineData("day-before-match-heavy", "C60/6(I5#A,U1#B)", " For: Group A.")]
    [InlineData("day-before-match-heavy", "C60/6(I5#A#B)", " For: Group A, Group B.")]
    [InlineData("day-before-match-heavy", "C60/6(I5,U1#A)", null)]
    public void A_finding_says_whose_it_is(string rule, string plan, string? whose)
    {
        var sentence = Assert.Single(Rulebook.Check(Plans.Of(plan), Plans.Team()).Findings, finding => finding.Rule.Id == rule).Sentence;
        if (whose is null) Assert.DoesNotContain("For:", sentence, StringComparison.Ordinal);
        else Assert.EndsWith(whose, sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Weeks_apart_and_other_words_are_findings_of_their_own()
    {
        Assert.Equal("rise caution 3, rise caution 5", Plans.Say("weekly-ramp", "B60x2 B70x2 B81"));
        Assert.Equal("days caution 4-5, small caution 4, large caution 5", Plans.Say("unloading-size", "GP: B100x3 U71 U49"));
    }

    /// <summary>Several times in one week: the season goes on with one line.</summary>
    [Fact]
    public void Twice_in_a_week_is_one_finding()
    {
        var finding = Assert.Single(Rulebook.Check(Plans.Of("C60/1/3/5"), Plans.Team()).Findings, finding => finding.Rule.Id == "match-gap-short");
        Assert.Equal(2, finding.Times);
        Assert.EndsWith("So it is 2 times in that week; this is the worst.", finding.Sentence, StringComparison.Ordinal);
    }

    /// <summary>A run is forced only where each of its worst weeks is: what is painted can mend the rest.</summary>
    [Fact]
    public void A_run_is_forced_where_its_largest_is() =>
        Assert.Equal("spike caution 5-6", Plans.Say("trailing-four-spike", "?10x4 G60/1/3/6 ?40", "weekly-ramp.on=no"));
}
