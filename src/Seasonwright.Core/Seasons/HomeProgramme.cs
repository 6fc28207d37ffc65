using Seasonwright.Core.Calendar;

namespace Seasonwright.Core.Seasons;

/// <summary>Training away from the team for some weeks, a break for instance, with what is there. It keeps its true dates as an event does, and its weeks need not be the season's.</summary>
/// <param name="FirstDay">Every week of it begins on that weekday.</param>
/// <param name="Weeks">1 to 6.</param>
/// <param name="Days">Each weekday once, at least one: all others are free.</param>
/// <param name="Groups">For who is in one of them, 1 to 20; null for none in particular.</param>
/// <param name="People">For them, 1 to 60; null for none in particular. With no groups either it is for the whole squad.</param>
public sealed record HomeProgramme(HomeProgrammeId Id, string Name, DateOnly FirstDay, int Weeks, HomeKit Kit, ValueList<HomeDay> Days, ValueList<GroupId>? Groups = null, ValueList<PersonId>? People = null)
{
    public const int MostWeeks = 6, MostGroups = 20, MostPeople = 60;

    /// <summary>From its first day to the last of its last week.</summary>
    public DaySpan Span() => new(FirstDay, FirstDay.AddDays(7 * Weeks - 1));

    public bool IsForAll => Groups is null && People is null;

    /// <summary>What is done on a weekday; null where it is free.</summary>
    public HomeDay? On(DayOfWeek day) => Days.FirstOrDefault(one => one.Day == day);
}
