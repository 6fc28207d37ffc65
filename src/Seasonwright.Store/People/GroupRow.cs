using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>A person's time in a group as the file has it; it goes with its athlete and with its season.</summary>
internal sealed record GroupRow(ClubId Club, string Person, StreamId Season, string Group, DateOnly From, DateOnly? To)
{
    public static GroupRow Of(ClubId club, StreamId season, GroupPlace place) => new(club, place.Person.Text, season, place.Group.Text, place.From, place.To);

    /// <exception cref="FormatException">A value we never wrote.</exception>
    public GroupPlace Value => To < From ? throw new FormatException("A time in a group that ends before it starts.")
        : new(new PersonId(Person), new SeasonId(Season.ToString()), new GroupId(Group), From, To);
}
