namespace Seasonwright.Documents.HandOut.Calendars;

/// <summary>What goes into a calendar.</summary>
/// <param name="Events">Also the legs of their journeys, each on its own.</param>
/// <param name="Practices">An entry over a week with the number of its practices, where it does not know their days.</param>
/// <param name="Group">
/// For whom: events and test days that name another group of the season are left out; those for everyone, and those for people
/// who are no group of the season, stay. Null for everybody.
/// </param>
/// <param name="Sessions">Sessions on their days, the head coach's practices among them.</param>
/// <param name="KeyMatches">Whether it may be seen which matches are key.</param>
public sealed record CalendarChoices(
    bool Matches = true, bool Events = true, bool TestDays = true, bool Practices = false, string? Group = null, bool KeyMatches = false, bool Sessions = true);
