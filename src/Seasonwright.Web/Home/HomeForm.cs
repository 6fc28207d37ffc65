using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Workouts;
using Seasonwright.Documents;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Home;

/// <summary>A home programme as typed.</summary>
/// <param name="For">"all" for the whole squad, else whoever is ticked.</param>
/// <param name="Days">By weekday.</param>
internal sealed record HomeForm(string Name, string First, string Weeks, string For, ImmutableHashSet<string> Groups, ImmutableHashSet<string> People, ImmutableHashSet<Equipment> Equipment, string Dumbbells, string Kettlebells,
    ImmutableDictionary<DayOfWeek, HomeDayForm> Days)
{
    private const string All = "all";

    /// <summary>Pieces that a home may have; those with weights are told by them.</summary>
    public static ImmutableArray<Equipment> Pieces { get; } =
    [
        Core.Seasons.Equipment.Band, Core.Seasons.Equipment.Bench, Core.Seasons.Equipment.Box, Core.Seasons.Equipment.PullUpBar, Core.Seasons.Equipment.Straps, Core.Seasons.Equipment.Sliders, Core.Seasons.Equipment.SwissBall,
        Core.Seasons.Equipment.MedicineBall, Core.Seasons.Equipment.Wheel, Core.Seasons.Equipment.Partner, Core.Seasons.Equipment.Track, Core.Seasons.Equipment.Bike, Core.Seasons.Equipment.Rower, Core.Seasons.Equipment.Pool,
        Core.Seasons.Equipment.Dumbbells, Core.Seasons.Equipment.Kettlebell,
    ];

    public bool IsForAll => For == All;

    /// <summary>Two weeks from the next Monday, with room to run and nothing else.</summary>
    public static HomeForm Offered(DateOnly today) => new("", today.AddDays((8 - (int)today.DayOfWeek) % 7).Iso(), "2", All, [], [], [Core.Seasons.Equipment.Track], "", "",
        Enum.GetValues<DayOfWeek>().ToImmutableDictionary(day => day, _ => HomeDayForm.Free));

    public static HomeForm Of(HomeProgramme programme, LocaleSettings locale) => new(programme.Name, programme.FirstDay.Iso(), programme.Weeks.ToString(CultureInfo.InvariantCulture), programme.IsForAll ? All : "some",
        [.. (programme.Groups ?? []).Select(group => group.Text)], [.. (programme.People ?? []).Select(person => person.Text)], [.. programme.Kit.Equipment],
        StepsText.Of(programme.Kit.Dumbbells, locale), StepsText.Of(programme.Kit.Kettlebells, locale),
        Enum.GetValues<DayOfWeek>().ToImmutableDictionary(day => day, day => programme.On(day) is { } one ? new HomeDayForm(one.Workout?.Text ?? "", RunText.Of(one.Run), one.Note ?? "") : HomeDayForm.Free));

    public static HomeForm Read(Posted posted) => new(posted["name"], posted["first"], posted["weeks"], posted["for"],
        [.. posted.Starting("group-").Select(tick => tick.Name)], [.. posted.Starting("person-").Select(tick => tick.Name)],
        [.. posted.Starting("has-").Select(tick => Enum.TryParse<Equipment>(tick.Name, out var one) ? one : default).Where(Pieces.Contains)], posted["dumbbells"], posted["kettlebells"],
        Enum.GetValues<DayOfWeek>().ToImmutableDictionary(day => day, day => new HomeDayForm(posted[$"workout-{day}"], posted[$"run-{day}"], posted[$"note-{day}"])));

    /// <summary>What cannot be read, by field; what cannot be is the season's to say.</summary>
    public ImmutableSortedDictionary<string, string> Problems(MassUnit unit)
    {
        var wrong = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        if (StartForm.WrongDay(First) is { } day) wrong["first"] = day;
        if (WeeksTyped is not (>= 1 and <= HomeProgramme.MostWeeks)) wrong["weeks"] = Words.Say("home.weeks-wrong", HomeProgramme.MostWeeks);
        foreach (var (field, text) in new[] { ("dumbbells", Dumbbells), ("kettlebells", Kettlebells) })
            if (text.Length > 0 && StepsText.Read(text, unit) is null) wrong[field] = Words.Say("home.weights-unread", text);
        if (!IsForAll && Groups.Count == 0 && People.Count == 0) wrong["for"] = Words.Say("home.nobody");
        foreach (var (weekday, one) in Days)
            if (one.Run.Length > 0 && RunText.Read(one.Run) is null) wrong[$"run-{weekday}"] = Words.Say("home.run-unread", one.Run);
        if (Days.Values.All(one => one.IsFree)) wrong["days"] = Words.Say("home.no-days");
        return wrong.ToImmutable();
    }

    /// <summary>The programme; ask <see cref="Problems"/> first.</summary>
    public HomeProgramme Programme(HomeProgrammeId id, MassUnit unit) => new(id, Name, StartForm.DayOf(First)!.Value, WeeksTyped!.Value,
        new(Pieces.Where(Equipment.Contains).ToValueList(), StepsText.Read(Dumbbells, unit), StepsText.Read(Kettlebells, unit)),
        [.. from day in new[] { DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday, DayOfWeek.Saturday, DayOfWeek.Sunday }
            let one = Days[day]
            where !one.IsFree
            select new HomeDay(day, IdText.IsId(one.Workout) ? new WorkoutId(one.Workout) : null, RunText.Read(one.Run), one.Note.Length > 0 ? one.Note : null)],
        IsForAll || Groups.Count == 0 ? null : Groups.Order(StringComparer.Ordinal).Where(IdText.IsId).Select(group => new GroupId(group)).ToValueList(),
        IsForAll || People.Count == 0 ? null : People.Order(StringComparer.Ordinal).Where(IdText.IsId).Select(person => new PersonId(person)).ToValueList());

    private int? WeeksTyped => int.TryParse(Weeks, NumberStyles.None, CultureInfo.InvariantCulture, out var weeks) ? weeks : null;
}

/// <summary>A weekday of it as typed.</summary>
/// <param name="Workout">Its id; "" for none.</param>
/// <param name="Run">"" for none.</param>
internal sealed record HomeDayForm(string Workout, string Run, string Note)
{
    public static HomeDayForm Free { get; } = new("", "", "");

    public bool IsFree => Workout.Length == 0 && Run.Length == 0;
}
