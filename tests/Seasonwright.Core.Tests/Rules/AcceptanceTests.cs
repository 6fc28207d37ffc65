using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>What the coach lives with stays out of sight while it is no larger and the figures are the same.</summary>
public class AcceptanceTests
{
    private const string Ramp = "weekly-ramp";

    private static readonly Season Rise = Plans.Of("GP: B60x2 B70");

    private static Finding Open(Season season, string rule, Setup setup) => Assert.Single(Rulebook.Check(season, setup).Findings, finding => finding.Rule.Id == rule);

    private static bool IsOpen(Season season, string rule, Setup setup)
    {
        var checkup = Rulebook.Check(season, setup);
        var isOpen = checkup.Findings.Any(finding => finding.Rule.Id == rule);
        // It is in one list or the other, never in both or neither.
        Assert.NotEqual(isOpen, checkup.Accepted.Any(accepted => accepted.Finding.Rule.Id == rule));
        return isOpen;
    }

    [Theory]
    [InlineData(70, "", false)]
    [InlineData(72, "", true)]
    [InlineData(70, "caution_up=0.16", true)]
    [InlineData(70, "min_ref_share=0.3", true)]
    [InlineData(70, "weekly-hours-preset.preset=us_college", false)]
    public void It_is_silent_until_it_grows_or_a_figure_changes(int load, string figures, bool isOpen)
    {
        var accepted = Plans.After(Rise, [Open(Rise, Ramp, Plans.Team()).Accept("The squad trained on in June."), new SetWeekLoad(Plans.Week(3), Plans.Week(3), new(10 * load))]);
        Assert.Equal(isOpen, IsOpen(accepted, Ramp, Plans.Team(Ramp, figures)));
    }

    /// <summary>What was accepted as it was does not hide what it has become: more serious, or going on for longer.</summary>
    [Theory]
    [InlineData("match-gap-short", "C60/4@16:00/7@18:00", "C60/4@16:00/7@17:00")]
    [InlineData("matches-per-week", "C60/1/6", "C60/1/3/6", "match-gap-short.on=no")]
    [InlineData("weekly-ramp", "B60x2 B70", "B60x2 B70 B81")]
    [InlineData("weekly-ramp", "B60x2 B71", "B60x2 B73", "highest_severity=warning")]
    [InlineData("weekly-ramp", "B80x2 B91", "B80x2 B93")]
    [InlineData("trailing-four-spike", "B50x4 B74", "B50x4 B76", "highest_severity=warning; weekly-ramp.on=no")]
    [InlineData("sprint-exposure-gap", "B60+v2 B60+s1 B60+v1", "B60+v2 B60+s1x2 B60+v1", "limit_days=14")]
    [InlineData("building-run-too-long", "GP: B60x6 U40", "GP: B60x7")]
    [InlineData("prep-weeks-short", "GP: B60x4 CO: C70/6", "GP: B60x3 CO: C70/6 C70")]
    [InlineData("transition-length", "CO: C70/6 TR: N20x5", "CO: C70/6 TR: N20x6")]
    [InlineData("unloading-size", "GP: B100x3 U71", "GP: B100x3 U71 U72", "max_days=14")]
    public void What_grows_comes_back(string rule, string plan, string worse, string figures = "")
    {
        var setup = Plans.Team(rule, figures);
        var finding = Open(Plans.Of(plan), rule, setup);
        Assert.False(IsOpen(Plans.After(Plans.Of(plan), [finding.Accept("So be it.")]), rule, setup));
        Assert.Equal(finding.Key, Open(Plans.Of(worse), rule, setup).Key);
        Assert.True(IsOpen(Plans.After(Plans.Of(worse), [finding.Accept("So be it.")]), rule, setup));
        // The other way round it stays accepted.
        Assert.False(IsOpen(Plans.After(Plans.Of(plan), [Open(Plans.Of(worse), rule, setup).Accept("So be it.")]), rule, setup));
    }

    /// <summary>One grave breach is not covered by several small ones that were accepted, together as large: two gaps of 72 hours, one of 48.</summary>
    [Theory]
    [InlineData("", null)]
    [InlineData("hard_h=80; preset=stop_72; preset_date=2025-07-01", StaffRole.Doctor)]
    public void What_is_worse_at_one_place_comes_back_though_it_is_no_more_in_all(string figures, StaffRole? role)
    {
        const string gap = "match-gap-short";
        var setup = Plans.Team(gap, figures);
        var lived = Open(Plans.Of("C60/1@18:00/4@20:00/7@22:00"), gap, setup).Accept("So be it.", role is null ? null : "Mara Lindt", role);
        Assert.False(IsOpen(Plans.After(Plans.Of("C60/1@18:00/4@20:00/7@22:00"), [lived]), gap, setup));
        Assert.True(IsOpen(Plans.After(Plans.Of("C60/1@18:00/3@20:00"), [lived]), gap, setup));
    }

    /// <summary>As large as before and yet graver: the match has become a key match.</summary>
    [Fact]
    public void What_becomes_more_serious_comes_back()
    {
        const string arrival = "time-zone-arrival";
        var setup = Plans.Team();
        var lived = Open(Plans.Of("C60/3 *Travel,1.1-1.7,1.1+6"), arrival, setup).Accept("So be it.");
        Assert.True(IsOpen(Plans.After(Plans.Of("C60/3! *Travel,1.1-1.7,1.1+6"), [lived]), arrival, setup));
    }

    [Fact]
    public void The_reason_stays_beside_what_was_accepted_and_going_back_opens_it()
    {
        var finding = Open(Rise, Ramp, Plans.Team());
        var accepted = Plans.After(Rise, [finding.Accept("The squad trained on in June.")]);
        var kept = Assert.Single(Rulebook.Check(accepted, Plans.Team()).Accepted);
        Assert.Equal(("The squad trained on in June.", finding), (kept.Acceptance.Reason, kept.Finding));
        Assert.True(IsOpen(Plans.After(accepted, [new ReopenFinding(finding.Key)]), Ramp, Plans.Team()));
    }

    /// <summary>A figure set to what it is anyway changes nothing.</summary>
    [Fact]
    public void The_same_figures_written_otherwise_are_the_same()
    {
        var accepted = Plans.After(Rise, [Open(Rise, Ramp, Plans.Team()).Accept("So be it.")]);
        Assert.False(IsOpen(accepted, Ramp, Plans.Team(Ramp, "caution_up=0.150; caution_points=10")));
    }

    [Theory]
    [InlineData(null, true)]
    [InlineData(StaffRole.StrengthAndConditioning, true)]
    [InlineData(StaffRole.HeadCoach, true)]
    [InlineData(StaffRole.Physiotherapist, true)]
    [InlineData(StaffRole.Doctor, false)]
    [InlineData(StaffRole.Management, false)]
    public void A_stop_is_released_only_by_those_who_may(StaffRole? role, bool isOpen)
    {
        const string gap = "match-gap-short";
        var setup = Plans.Team(gap, "preset=stop_72; preset_date=2025-07-01");
        var season = Plans.Of("C60/4@16:00/7@17:00");
        var stop = Open(season, gap, setup);
        Assert.Equal([stop], Rulebook.Check(season, setup).Stops);
        var released = Plans.After(season, [stop.Accept("Agreed with the league.", role is null ? null : "Ada Quill", role)]);
        Assert.Equal(isOpen, IsOpen(released, gap, setup));
    }

    /// <summary>What was accepted as a warning is no release of the stop that the limits of a governing body make of it.</summary>
    [Fact]
    public void A_warning_accepted_before_does_not_release_the_stop_it_becomes()
    {
        const string gap = "match-gap-short";
        var season = Plans.Of("C60/4@16:00/7@17:00");
        var accepted = Plans.After(season, [Open(season, gap, Plans.Team()).Accept("We rotate.")]);
        Assert.False(IsOpen(accepted, gap, Plans.Team()));
        Assert.True(IsOpen(accepted, gap, Plans.Team(gap, "preset=stop_72; preset_date=2025-07-01")));
    }

    /// <summary>Contested rules ask for no answer unless the team wants them to.</summary>
    [Fact]
    public void Contested_rules_stay_cautions_until_the_team_raises_them()
    {
        var contested = Rulebook.All.Where(rule => rule.Evidence == Evidence.Contested).ToList();
        Assert.Equal(["base-load-low", "monotony-and-strain", "trailing-four-spike", "weekly-ramp"], contested.Select(rule => rule.Id).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.All(contested, rule => Assert.Equal(Severity.Caution, RuleText.HighestByDefault(rule)));
        // Each that can be called a warning has the figure that lets it.
        Assert.All(contested.Where(rule => rule.Highest > Severity.Caution), rule => Assert.Contains(Figure.HighestSeverity, rule.Figures));
        Assert.Equal("rise caution 3", Plans.Say(Ramp, "B60x2 B90"));
        Assert.Equal("rise warning 3", Plans.Say(Ramp, "B60x2 B90", "highest_severity=warning"));
    }

    /// <summary>What a newer version, or a slip, wrote into a setup is no figure: the rule's own counts.</summary>
    [Theory]
    [InlineData("caution_up", "0.5", "Checked")]
    [InlineData("caution_up", "a lot", "rise caution 3")]
    [InlineData("caution_up", "-1", "rise caution 3")]
    [InlineData("caution_up", "11", "rise caution 3")]
    [InlineData("caution_up", "0,5", "rise caution 3")]
    [InlineData("on", "perhaps", "rise caution 3")]
    [InlineData("on", "no", "Off")]
    [InlineData("of_tomorrow", "1", "rise caution 3")]
    public void A_value_that_cannot_be_held_counts_for_nothing(string figure, string value, string says) =>
        Assert.Equal(says, Plans.Say(Ramp, "B60x2 B70", $"{figure}={value}; caution_points=100"));
}
