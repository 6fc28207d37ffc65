using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Strength;

/// <summary>A workout carried over the weeks of a block: by its way, by what the week is, by what the coach wrote.</summary>
public class WorkoutWeekTests
{
    private static readonly WorkoutItemId Squat = new("squat"), Pull = new("pull"), Warm = new("warm");

    private static readonly Workout Legs = new(new("legs"), "Legs",
    [
        new(PartKind.WarmUp, [new(Warm, new("goblet-squat"), new(2, 8, WorkUnit.Repetitions, Effort.Free))], 30),
        new(PartKind.Superset, [new(Squat, new("back-squat"), new(4, 6, WorkUnit.Repetitions, Effort.OfMax(75))), new(Pull, new("pull-up"), new(3, 8, WorkUnit.Repetitions, Effort.Reserve(3)))], 120),
    ], new(ProgressionKind.Linear, 2.5m, 1), new("maximum-strength"));

    private static readonly DateOnly Monday = new(2027, 7, 5);

    /// <summary>Introductory, three that load, unloading, competition with upkeep alone, taper; one session a week, two in the third.</summary>
    private static readonly Season Season = History.After(
    [
        new StartSeason(Monday, DayOfWeek.Monday, new(Enumerable.Range(1, 8).Select(n => new WeekId($"w{n}"))), new("Harbour Vale")),
        new PaintBlock(new("w1"), new("w5"), new("b"), BlockKind.Base, new("x")),
        Kind(1, WeekKind.Introductory), Kind(2, WeekKind.Building), Kind(3, WeekKind.Building), Kind(4, WeekKind.Overload), Kind(5, WeekKind.Unloading), Kind(6, WeekKind.Competition), Kind(7, WeekKind.Taper),
        new SetEmphasis(new("w6"), new("w7"), new("maximum-strength"), Emphasis.Maintain),
        new SetWorkout(Legs),
        .. Enumerable.Range(0, 8).Select(week => Session($"s{week + 1}", 7 * week)), Session("s3b", 16),
    ]);

    private static SetWeekKind Kind(int week, WeekKind kind) => new(new($"w{week}"), new($"w{week}"), kind);

    private static SetSession Session(string id, int day) => new(new Session(new(id), Monday.AddDays(day), DaySlot.Morning, SessionKind.LowerStrength, new Minutes(60), new Rpe(7), Workout: Legs.Id));

    private static Prescription In(Season season, int week, WorkoutItemId item, int session = 0) => WorkoutWeek.Of(season, season.Workout(Legs.Id)!, season.Weeks[week - 1], session).Items.Single(one => one.Item.Id == item).Prescription;

    private static string Words(Prescription prescription) => $"{prescription.Sets} x {prescription.Amount} {prescription.Effort.Kind} {prescription.Effort.Amount}";

    [Theory]
    // Sets x 0.65, five points lighter; the steps have not begun.
    [InlineData(1, "3 x 6 OfMax 70", "2 x 8 Reserve 5")]
    [InlineData(2, "4 x 6 OfMax 75", "3 x 8 Reserve 3")]
    // A step: two and a half points and a repetition less, which is lighter by itself; what is in reserve stays as it was.
    [InlineData(3, "4 x 5 OfMax 77.5", "3 x 7 Reserve 3")]
    // The hardest of the block: a fifth more sets.
    [InlineData(4, "5 x 4 OfMax 80", "4 x 6 Reserve 3")]
    // The easier week stands where the last that loaded stood, with six tenths of the sets and five points less.
    [InlineData(5, "2 x 4 OfMax 75", "2 x 6 Reserve 5")]
    // Outside the block it goes on from its first session; upkeep takes a third of the sets.
    [InlineData(6, "3 x 3 OfMax 82.5", "2 x 5 Reserve 3")]
    [InlineData(7, "1 x 3 OfMax 82.5", "1 x 5 Reserve 3")]
    public void Each_week_has_its_own(int week, string squat, string pull)
    {
        Assert.Equal((squat, pull), (Words(In(Season, week, Squat)), Words(In(Season, week, Pull))));
        Assert.Equal("2 x 8 Free ", Words(In(Season, week, Warm)));
    }

    [Fact]
    public void A_step_of_per_cent_alone_takes_repetitions_from_the_reserve()
    {
        var season = History.After(Season, new SetWorkout(Legs with { Progression = new(ProgressionKind.Linear, 2.5m) }));
        Assert.Equal(["3 x 8 Reserve 3", "3 x 8 Reserve 2", "4 x 8 Reserve 1"], new[] { 2, 3, 4 }.Select(week => Words(In(season, week, Pull))), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(ProgressionKind.Same, "0 0 0 0 0 0 0")]
    [InlineData(ProgressionKind.Linear, "0 1 2 3 4 5 6")]
    [InlineData(ProgressionKind.Step, "0 0 1 1 2 2 3")]
    [InlineData(ProgressionKind.Wave, "0 1 2 1 2 3 2")]
    public void Ways_over_the_weeks(ProgressionKind kind, string steps) =>
        Assert.Equal(steps, string.Join(' ', Enumerable.Range(0, 7).Select(week => new Progression(kind).StepsAt(week, 1))));

    [Fact]
    public void Sessions_of_a_week_undulate()
    {
        var season = History.After(Season, new SetWorkout(Legs with { Progression = new(ProgressionKind.Undulating, 5) }));
        var session = season.Session(new("s3b"))!;
        Assert.Equal(["4 x 6 OfMax 80", "4 x 6 OfMax 70"], new[] { 0, 1 }.Select(nth => Words(In(season, 3, Squat, nth))), StringComparer.Ordinal);
        Assert.Equal(WorkoutWeek.Of(season, Legs with { Progression = new(ProgressionKind.Undulating, 5) }, season.Weeks[2], 1), WorkoutWeek.Of(season, session));
    }

    [Fact]
    public void What_the_coach_wrote_for_a_week_stands()
    {
        var own = new Prescription(2, 3, WorkUnit.Repetitions, Effort.OfMax(85));
        var season = History.After(Season, new SetWorkout(Legs with { Cells = [new(new("w4"), Squat, own), new(new("w4"), Pull, null)] }));
        var week = WorkoutWeek.Of(season, season.Session(new("s4"))!)!;
        Assert.Equal(("2 x 3 OfMax 85", true), (Words(week.Items.Single(item => item.Item.Id == Squat).Prescription), week.Items.Single(item => item.Item.Id == Squat).IsOwn));
        Assert.DoesNotContain(week.Items, item => item.Item.Id == Pull);
        Assert.Equal("4 x 5 OfMax 77.5", Words(In(season, 3, Squat)));
    }

    [Fact]
    public void A_session_without_one_has_none()
    {
        var session = Season.Session(new("s1"))!;
        Assert.Null(WorkoutWeek.Of(Season, session with { Workout = null }));
        Assert.Null(WorkoutWeek.Of(Season, session with { Workout = new("other") }));
        Assert.Null(WorkoutWeek.Of(Season, session with { Day = Monday.AddDays(-1) }));
        Assert.Equal(Legs.Items.Count(), WorkoutWeek.Written(Legs).Items.Count());
    }
}
