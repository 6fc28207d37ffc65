using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rooms;

/// <summary>What the teams of a club share: its facilities. Immutable.</summary>
public sealed class Club(FactSet facts) : IEquatable<Club>
{
    public static Club Empty { get; } = new(FactSet.Empty);

    public FactSet Facts { get; } = facts;

    /// <summary>By name.</summary>
    public IEnumerable<Facility> Facilities => Facts.All(ClubFacets.Facility).Select(one => one.Value)
        .OrderBy(one => one.Room.Name, StringComparer.OrdinalIgnoreCase).ThenBy(one => one.Room.Id.Text, StringComparer.Ordinal);

    public Facility? Facility(RoomId id) => Facts.Find(ClubFacets.Facility, id);

    /// <summary>The facility that a session is in; null for none, or for one that is no more.</summary>
    public Facility? FacilityOf(Session session) => session.Room is { } room ? Facility(room) : null;

    /// <summary>A team's setup with what a session has to lift with: the facility's where it says so, else the team's own.</summary>
    public Setup SetupFor(Setup setup, Session session) =>
        FacilityOf(session)?.Gym is { } gym ? new Setup(setup.Id, setup.Facts.With(SetupFacets.Gym.Of(default), gym)) : setup;

    public Club With(Step step) => new(Facts.Evolve(step));

    public bool Equals(Club? other) => other is not null && Facts.Equals(other.Facts);

    public override bool Equals(object? obj) => Equals(obj as Club);

    public override int GetHashCode() => Facts.GetHashCode();
}
