using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Lists;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;
using Seasonwright.Desk.Streams;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Squads;
using MassUnit = Seasonwright.Core.Quantities.MassUnit;

namespace Seasonwright.Desk.Tests;

/// <summary>Tested sets told, refused and taken back. The clock stands at Wednesday 20 October 2027, 07:00.</summary>
public sealed class LiftTests
{
    private static readonly DateOnly Today = new(2027, 10, 20);
    private static readonly LiftDraft Squat = new(new("back-squat"), Today, 100, MassUnit.Kilogram, 5);
    private static readonly LiftDraft PullUp = new(new("pull-up"), Today, 0, MassUnit.Kilogram, 5);

    [Fact]
    public async Task A_set_is_told_once_and_taken_back()
    {
        await using var desk = await Desk.OpenAsync();
        var (setup, ida) = await PlayerAsync(desk, 24, new(62m, BodyMassUnit.Kilogram));
        var gesture = Guid.NewGuid();
        for (var time = 0; time < 2; time++) Assert.IsType<Kept>(await desk.Workspace.TellLiftAsync(setup, gesture, ida, Squat));
        await desk.RestartAsync();
        var test = Assert.Single(await LiftsAsync(desk, setup));
        Assert.Equal((gesture, "back-squat", Today, new Weight(100), 5), (test.Id, test.Exercise.Text, test.Day, test.Weight, test.Repetitions));
        // By hand: 36 x 100 / (37 - 5) = 112.5, the equation of Brzycki M 1993 as compiled in LeSuer DA et al. 1997, J Strength Cond Res 11(4):211-213.
        var maximum = Maximum.On(Today, [test], setup.Exercise(test.Exercise)!, setup)!;
        Assert.Equal((new Weight(112.5m), MaximumFrom.Repetitions, "brzycki"), (maximum.Weight, maximum.From, maximum.Equation!.Name));

        // Somebody else's set is not theirs to take back.
        Assert.IsType<Kept>(await desk.Workspace.TakeBackLiftAsync(setup.Id, new("nobody"), gesture));
        Assert.Single(await LiftsAsync(desk, setup));
        for (var time = 0; time < 2; time++) Assert.IsType<Kept>(await desk.Workspace.TakeBackLiftAsync(setup.Id, ida, gesture));
        Assert.Empty(await LiftsAsync(desk, setup));
        Assert.IsType<NotDone>(await desk.Workspace.TellLiftAsync(setup, Guid.NewGuid(), new("nobody"), Squat));
    }

    [Fact]
    public async Task Where_the_body_is_lifted_its_mass_comes_to_what_hangs_on_it()
    {
        await using var desk = await Desk.OpenAsync();
        var (setup, ida) = await PlayerAsync(desk, 24, new(62m, BodyMassUnit.Kilogram));
        Assert.IsType<Kept>(await desk.Workspace.TellLiftAsync(setup, Guid.NewGuid(), ida, PullUp));
        Assert.IsType<Kept>(await desk.Workspace.TellLiftAsync(setup, Guid.NewGuid(), ida, PullUp with { Amount = 7.5m, Repetitions = 3 }));
        // 62 kg are 136.687 lb: 62 / 0.45359237, the international pound of 1959.
        Assert.IsType<Kept>(await desk.Workspace.TellLiftAsync(setup, Guid.NewGuid(), ida, PullUp with { Amount = 10, Unit = MassUnit.Pound, Repetitions = 4 }));
        Assert.Equal("62 kg, 69.5 kg, 146.687 lb", string.Join(", ", (await LiftsAsync(desk, setup)).OrderBy(test => test.Weight.Unit).ThenBy(test => test.Weight.Amount).Select(test => test.Weight)));

        var (other, nobodyWeighed) = await PlayerAsync(desk, 24, null);
        Assert.Equal("lift-body-mass weight", await RefusedAsync(desk, other, nobodyWeighed, PullUp));
    }

    [Fact]
    public async Task What_cannot_be_is_told_by_field_and_nothing_is_kept()
    {
        await using var desk = await Desk.OpenAsync();
        var (setup, ida) = await PlayerAsync(desk, 24, new(62m, BodyMassUnit.Kilogram));
        foreach (var (draft, told) in new (LiftDraft, string)[]
        {
            (Squat with { Exercise = null }, "lift-exercise exercise"),
            (Squat with { Exercise = new("no-such-lift") }, "lift-exercise exercise"),
            (Squat with { Amount = 0 }, "lift-weight weight"),
            (Squat with { Amount = -5 }, "lift-weight weight"),
            (Squat with { Amount = 1_000.5m }, "lift-weight weight"),
            (PullUp with { Amount = -62 }, "lift-weight weight"),
            (PullUp with { Amount = 939 }, "lift-weight weight"),
            (Squat with { Repetitions = 0 }, "lift-repetitions repetitions"),
            (Squat with { Repetitions = 16 }, "lift-repetitions repetitions"),
            (Squat with { Repetitions = 40 }, "lift-repetitions repetitions"),
            (Squat with { Repetitions = null }, "lift-repetitions repetitions"),
            (Squat with { Velocity = 0 }, "lift-velocity velocity"),
            (Squat with { Velocity = 4.01m }, "lift-velocity velocity"),
            (Squat with { Day = Today.AddDays(1) }, "lift-day day"),
            (Squat with { Day = new(2007, 10, 20) }, "lift-day day"),
            (Squat with { Exercise = null, Repetitions = 0, Velocity = 9, Day = Today.AddDays(9) }, "lift-exercise exercise, lift-day day, lift-repetitions repetitions, lift-velocity velocity"),
        }) Assert.Equal(told, await RefusedAsync(desk, setup, ida, draft));
        Assert.Empty(await LiftsAsync(desk, setup));
        foreach (var draft in new[] { Squat with { Repetitions = 1 }, Squat with { Repetitions = 15 }, Squat with { Repetitions = null, Velocity = 4 }, PullUp with { Amount = 938 } })
            Assert.IsType<Kept>(await desk.Workspace.TellLiftAsync(setup, Guid.NewGuid(), ida, draft));
    }

    /// <summary>Common practice, no source: before 18, or the age a team has set itself, nobody is tested near a maximum.</summary>
    [Theory]
    [InlineData(17, null, 1, false)]
    [InlineData(17, null, 4, false)]
    [InlineData(17, null, 5, true)]
    [InlineData(18, null, 1, true)]
    [InlineData(17, "17", 1, true)]
    [InlineData(16, "17", 1, false)]
    [InlineData(18, "19", 1, false)]
    public async Task The_young_are_not_tested_near_a_maximum(int age, string? own, int repetitions, bool isTaken)
    {
        await using var desk = await Desk.OpenAsync();
        var (empty, person) = await PlayerAsync(desk, age, null);
        var setup = own is null ? empty : empty.With(Assert.IsType<Accepted>(Decider.Decide(empty, new SetRuleParameter(new("novice-max-test", "youth_age"), own))).Step);
        var answer = await desk.Workspace.TellLiftAsync(setup, Guid.NewGuid(), person, Squat with { Repetitions = repetitions });
        Assert.Equal(isTaken, answer is Kept);
        if (answer is NotDone { Reasons: var reasons }) Assert.Contains($"before {own ?? "18"} here; 5 to 10 repetitions are", Assert.Single(reasons).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lifts_of_a_list_become_tested_sets_once_but_for_what_the_young_are_not_tested_with()
    {
        await using var desk = await Desk.OpenAsync();
        var team = (await desk.SeasonAsync(await desk.StartAsync())).Setup.Id;
        await desk.Workspace.KeepSquadAsync(team, SquadReader.Read(SourceText.OfText("squad",
            "Nr;Name;Born;Age;Mass (kg);Back squat (kg)\n1;Varnum, Ysolde;1999-03-14;;71.5;90x3\n4;Thistlewick, Maren;2011-03-14;;;55x3\n5;Lund, Tuva;;15;;50x3"), new SquadOptions(Today)));
        var gesture = Guid.NewGuid();
        for (var time = 0; time < 2; time++) await desk.Workspace.TakeSquadListAsync(Setup.Empty(team), gesture, Today);
        var roster = await desk.Workspace.RosterAsync(team);
        var listed = string.Join(", ", (await desk.Workspace.SquadAsync(team)).SelectMany(player => player.Lifts));
        Assert.Equal("back squat 90 kg x 3, back squat 55 kg x 3, back squat 50 kg x 3", listed);
        var test = Assert.Single(roster.SelectMany(player => player.Lifts));
        Assert.Equal(("Ysolde Varnum", "back-squat", new Weight(90), 3, Today), (roster.Single(player => player.Id == test.Person).Athlete.Name, test.Exercise.Text, test.Weight, test.Repetitions, test.Day));
    }

    private static async Task<string> RefusedAsync(Desk desk, Setup setup, PersonId person, LiftDraft draft) =>
        string.Join(", ", Assert.IsType<NotDone>(await desk.Workspace.TellLiftAsync(setup, Guid.NewGuid(), person, draft)).Reasons.Select(reason => $"{reason.Id} {reason.Subject}"));

    private static async Task<IReadOnlyList<LiftTest>> LiftsAsync(Desk desk, Setup setup) => [.. (await desk.Workspace.RosterAsync(setup.Id)).SelectMany(player => player.Lifts)];

    private static async Task<(Setup Setup, PersonId Person)> PlayerAsync(Desk desk, int age, BodyMass? mass)
    {
        var setup = (await desk.SeasonAsync(await desk.StartAsync())).Setup;
        var draft = new AthleteDraft(null, "Norlund", "Ida", "4", [], Today.AddYears(-age).AddDays(-1), 6, mass, Today, null, null, []);
        return (setup, (await desk.Workspace.PutAthleteAsync(setup.Id, Guid.NewGuid(), draft with { IsAnother = true })).Person);
    }
}
