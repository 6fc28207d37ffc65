using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using static Seasonwright.Core.Tests.Squad.GymDay;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>Two weeks at home from the season's first Monday: everything on Mondays, a steady run on Wednesdays, intervals on Fridays.</summary>
internal static class Home
{
    public static readonly HomeRun Steady = new(1, 1_500, WorkUnit.Seconds, new Percent(70), More: 10), Intervals = new(6, 300, WorkUnit.Metres, new Percent(95), 90, 20);

    /// <summary>Dumbbells of 2 to 20 kg, a band, room to run.</summary>
    public static readonly HomeKit Usual = new([Equipment.Band, Equipment.Track], new(2, 20, 2, MassUnit.Kilogram));

    public static readonly HomeProgramme Break = new(new("break"), "Winter break", Monday, 2, Usual,
        [new(DayOfWeek.Monday, All), new(DayOfWeek.Wednesday, null, Steady), new(DayOfWeek.Friday, null, Intervals)]);

    /// <summary>Ran 1,500 m in 375 s a week before: 4 m/s.</summary>
    public static readonly Player Runner = Strong with { Runs = [new(Guid.Empty, Strong.Id, Monday.AddDays(-7), 1_500, 375, default)] };

    public static AthleteHome AtHome(Player player, HomeProgramme? programme = null, Workout? workout = null) =>
        AthleteHome.Of(programme ?? Break, Season(workout ?? Everything, new SetHomeProgramme(programme ?? Break)), Setup(FullGym), player);

    public static AthleteHomeDay Day(AthleteHome home, int week, DayOfWeek day) => home.In(week).Single(one => one.Day.DayOfWeek == day);

    public static HomeLine Line(AthleteHome home, string item, int week = 1) => home.In(week).SelectMany(day => day.Lines).Single(line => line.Work.Item.Id.Text == item);
}
