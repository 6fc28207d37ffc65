using System.Collections.Immutable;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Boards;

/// <summary>What the marks of a session come to: of those about the same thing the last one. Their order and how often they came change nothing.</summary>
/// <param name="Came">Whoever is not named is expected.</param>
/// <param name="Sets">Of those that are not open.</param>
/// <param name="Swaps">Exercises in the place of written ones.</param>
/// <param name="Out">Names of racks that cannot be used.</param>
/// <param name="Stands">Who lifts where.</param>
/// <param name="Way">How the room is shared; null while nobody chose.</param>
/// <param name="Started">Null while it has not begun.</param>
public sealed record BoardState(
    ImmutableDictionary<PersonId, Attendance> Came,
    ImmutableDictionary<(PersonId Person, WorkoutItemId Item, int Set), SetMark> Sets,
    ImmutableDictionary<(PersonId Person, WorkoutItemId Item), ExerciseId> Swaps,
    ImmutableHashSet<string> Out,
    ImmutableDictionary<PersonId, StandMark> Stands,
    FloorWayKind? Way,
    DateTimeOffset? Started)
{
    public static BoardState Of(IEnumerable<BoardMark> marks)
    {
        // The smaller of two ids is taken for the earlier one: the same on every board.
        var last = marks.DistinctBy(mark => mark.Id).OrderBy(mark => mark.At).ThenBy(mark => mark.Id).ToList();
        return new(
            Last<CameMark, PersonId>(mark => mark.Person).ToImmutableDictionary(mark => mark.Person, mark => mark.How),
            Last<SetMark, (PersonId, WorkoutItemId, int)>(mark => (mark.Person, mark.Item, mark.Set)).Where(mark => mark.How != SetHow.Open).ToImmutableDictionary(mark => (mark.Person, mark.Item, mark.Set)),
            Last<SwapMark, (PersonId, WorkoutItemId)>(mark => (mark.Person, mark.Item)).Where(mark => mark.Exercise is not null).ToImmutableDictionary(mark => (mark.Person, mark.Item), mark => mark.Exercise!.Value),
            Last<RackMark, string>(mark => mark.Rack).Where(mark => mark.IsOut).Select(mark => mark.Rack).ToImmutableHashSet(StringComparer.Ordinal),
            Last<StandMark, PersonId>(mark => mark.Person).ToImmutableDictionary(mark => mark.Person),
            last.OfType<WayMark>().LastOrDefault()?.Way,
            last.OfType<StartMark>().LastOrDefault() is { IsRunning: true } start ? start.Since ?? start.At : null);

        IEnumerable<TMark> Last<TMark, TKey>(Func<TMark, TKey> about) => last.OfType<TMark>().GroupBy(about).Select(same => same.Last());
    }

    public Attendance Of(PersonId person) => Came.GetValueOrDefault(person);

    /// <summary>An exercise as somebody does it now: the one it was swapped for where they may. Null where nothing of it is left.</summary>
    public BoardLine? LineOf(BoardAthlete one, WorkoutItemId item) => one.Line(item, Swaps.TryGetValue((one.Athlete.Id, item), out var swap) ? swap : null);

    /// <summary>The racks of a gym that work.</summary>
    public IEnumerable<GymRack> RacksOf(Gym gym) => gym.Racks.Where(rack => !rack.IsBroken && !Out.Contains(rack.Name));

    /// <summary>The half that somebody is in; null while the squad is not parted.</summary>
    public SquadHalf? HalfOf(PersonId person) => Way is FloorWayKind.Split or FloorWayKind.Waves ? Stands.GetValueOrDefault(person)?.Half : null;
}
