using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>A person's time in a group of a season's. A row, never in the log: who is where goes with the person.</summary>
/// <param name="To">The last day, still in it; null while it goes on. Not before <paramref name="From"/>.</param>
public sealed record GroupPlace(PersonId Person, SeasonId Season, GroupId Group, DateOnly From, DateOnly? To)
{
    public bool Contains(DateOnly day) => From <= day && !(To < day);
}
