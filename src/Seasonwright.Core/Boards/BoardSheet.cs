using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Boards;

/// <summary>
/// A session as it is led at the racks: everybody's exercises with everything that a tap can make of them worked out beforehand, so that a board that is cut off
/// looks up and does not reckon.
/// </summary>
/// <param name="Items">That are work, in the order of the workout.</param>
/// <param name="Ladders">The weights that can be made, each ladder once.</param>
/// <param name="Racks">All of the gym.</param>
/// <param name="Athletes">In the order of the players; those who take no part too.</param>
public sealed record BoardSheet(Session Session, WorkoutWeek Workout, Gym Gym, ValueList<BoardItem> Items, ValueList<ValueList<MadeWeight>> Ladders, ValueList<BoardRack> Racks, ValueList<BoardAthlete> Athletes)
{
    /// <summary>Others to choose from for an exercise: the nearest, and the nearest that need no rack.</summary>
    private const int NearSwaps = 3, RacklessSwaps = 2;

    public Exercise? Exercise(ExerciseId id) => Items.SelectMany(item => item.Swaps.Prepend(item.Exercise)).FirstOrDefault(exercise => exercise.Id == id)
        ?? Athletes.SelectMany(one => one.Lines).FirstOrDefault(line => line.Line.Exercise.Id == id)?.Line.Exercise;

    /// <returns>Null where nothing is written for the session.</returns>
    public static BoardSheet? Of(Season season, Setup setup, Session session, IReadOnlyList<Player> players)
    {
        if (WorkoutWeek.Of(season, session) is not { } workout) return null;
        var (gym, first) = (setup.Gym, RackLoads.Of(setup.Gym));
        var (atHand, exercises) = (gym.AtHand.ToHashSet(), setup.Exercises);
        var items = (from part in workout.Parts
                     where part.Part.IsWork
                     from item in part.Items
                     let exercise = setup.Exercise(item.Item.Exercise)
                     where exercise is not null
                     let near = Substitutes.Near(exercise, atHand, exercises).ToList()
                     select new BoardItem(item, part, workout.Workout.PlaceOf(item.Item), exercise, [.. near.Take(NearSwaps).Union(near.Where(other => !NeedsRack(other)).Take(RacklessSwaps))])).ToValueList();
        var ladders = new LadderBook(gym);
        // As it is written, then each swap on its own: who may not do it has no line for it.
        var work = AthleteWork.Of(season, setup, session, players, first);
        var lines = work.ToDictionary(one => one.Person, one => one.Lines.Where(line => line.Part.IsWork).ToList());
        foreach (var item in items)
            foreach (var swap in item.Swaps)
                foreach (var one in AthleteWork.Of(season, setup, session, players, first, new Dictionary<WorkoutItemId, ExerciseId> { [item.Item.Item.Id] = swap.Id }))
                    lines[one.Person].AddRange(one.Lines.Where(line => line.Item.Id == item.Item.Item.Id && line.Exercise.Id == swap.Id && lines[one.Person].TrueForAll(other => other.Item.Id != line.Item.Id || other.Exercise.Id != line.Exercise.Id)));
        var byId = players.ToDictionary(player => player.Id);
        var athletes = work.Select(one => new BoardAthlete(byId[one.Person].Athlete, one,
            [.. byId[one.Person].Groups.Where(place => place.Season == season.Id && place.Contains(session.Day)).Select(place => place.Group)],
            [.. lines[one.Person].Select(line => new BoardLine(line, ladders.Of(line, one, byId[one.Person], session.Day, setup)))])).ToValueList();
        return new(session, workout, gym, items, ladders.All, ladders.Racks, athletes);
    }

    /// <summary>Whether the bar of a rack is taken for it.</summary>
    internal static bool NeedsRack(Exercise exercise) =>
        exercise.Equipment.Contains(Equipment.Rack) || exercise.Load == LoadedBy.Bar && !exercise.Equipment.Contains(Equipment.TrapBar);

    /// <summary>The ladders of a gym as they are asked for, each once; racks that load alike have one.</summary>
    private sealed class LadderBook
    {
        private readonly List<ValueList<MadeWeight>> all = [];
        private readonly Dictionary<(int Make, LoadedBy Load, bool IsTrap), int?> known = [];
        private readonly List<RackLoads> makes;
        private readonly List<int> makeOf;
        private readonly Gym gym;

        public LadderBook(Gym gym)
        {
            this.gym = gym;
            var alike = gym.Racks.Select(rack => (rack.Bar, rack.Plates, rack.Collar)).Distinct().ToList();
            makeOf = [.. gym.Racks.Select(rack => alike.IndexOf((rack.Bar, rack.Plates, rack.Collar)))];
            makes = alike.Count == 0 ? [RackLoads.Of(gym)] : [.. alike.Select((_, make) => RackLoads.Of(gym, gym.Racks[makeOf.IndexOf(make)]))];
        }

        public ValueList<ValueList<MadeWeight>> All => all.ToValueList();

        public ValueList<BoardRack> Racks => [.. gym.Racks.Select((rack, at) => new BoardRack(rack, [.. known.Where(ladder => ladder.Key.Make == makeOf[at]).Select(ladder => ladder.Value).OfType<int>().Order()]))];

        /// <summary>Where a line stands on each ladder it can be loaded from; none where no weight is known.</summary>
        public ValueList<LineLoad> Of(WorkLine line, AthleteWork work, Player player, DateOnly day, Setup setup)
        {
            var isRacks = line.Exercise.Load is LoadedBy.Bar or LoadedBy.Sled or LoadedBy.OnTheBody;
            return [.. Enumerable.Range(0, isRacks ? makes.Count : 1).Select(make => At(make)).OfType<LineLoad>()];

            LineLoad? At(int make)
            {
                if (LadderOf(make, line.Exercise) is not { } ladder) return null;
                var loads = work.IsMinor ? makes[make].NeverAbove : makes[make];
                var at = line.Load.Target is { } target ? Place(ladder, loads.Make(line.Exercise, target)) : null;
                return new(ladder, at, at is null ? [] : ByLeft(loads, ladder, at.Value));
            }

            // What the rest of the sets becomes by what the first one left.
            ValueList<int> ByLeft(RackLoads loads, int ladder, int at)
            {
                var (maximum, body) = (player.MaximumOn(day, line.Exercise, setup)?.Weight, player.BodyMassOn(day));
                if (maximum is not { } most || line.Prescription is not { Unit: WorkUnit.Repetitions, Effort.Kind: EffortKind.OfMax or EffortKind.Reserve }) return [];
                var lifted = all[ladder][at].Weight;
                if (line.Exercise.Load == LoadedBy.OnTheBody) lifted = new Weight(lifted.Kilograms + (body ?? 0));
                return [.. Enumerable.Range(0, SetMark.MostLeft + 1).Select(left =>
                {
                    var share = DayShare.OfReserve(lifted, line.Prescription.Amount, left, most) ?? 1;
                    // The young, and who is modified, do not lift more because a day is good.
                    var today = work.IsMinor || work.IsModified ? Math.Min(1, share) : share;
                    return Place(ladder, GivenLoad.Of(line.Prescription, line.Exercise, most, body, loads, today).Made) ?? at;
                })];
            }
        }

        private int? Place(int ladder, MadeWeight? made) => made is not null && all[ladder].ToList().FindIndex(one => one.Weight == made.Weight) is >= 0 and var at ? at : null;

        private int? LadderOf(int make, Exercise exercise)
        {
            var key = (make, exercise.Load, exercise.Equipment.Contains(Equipment.TrapBar));
            if (known.TryGetValue(key, out var at)) return at;
            var ladder = makes[make].Ladder(exercise);
            if (ladder.Count == 0) return known[key] = null;
            all.Add(ladder);
            return known[key] = all.Count - 1;
        }
    }
}

/// <summary>An exercise of the session.</summary>
/// <param name="Place">"A", "B1".</param>
/// <param name="Swaps">Others that a coach may choose.</param>
public sealed record BoardItem(WrittenItem Item, WrittenPart Part, string Place, Exercise Exercise, ValueList<Exercise> Swaps)
{
    /// <summary>As it is written, the bar of a rack is taken for it.</summary>
    public bool NeedsRack => BoardSheet.NeedsRack(Exercise);
}

/// <summary>A rack and the ladders of what is loaded there.</summary>
public sealed record BoardRack(GymRack Rack, ValueList<int> Ladders);

/// <summary>Somebody whose session it is.</summary>
/// <param name="Lines">As written and for every swap that the person may do.</param>
public sealed record BoardAthlete(Athlete Athlete, AthleteWork Work, ValueList<GroupId> Groups, ValueList<BoardLine> Lines)
{
    /// <summary>An exercise as the person does it: the chosen one where they may, else the written one. Null where nothing of it is left.</summary>
    public BoardLine? Line(WorkoutItemId item, ExerciseId? swap) =>
        Lines.FirstOrDefault(line => line.Line.Item.Id == item && line.Line.Exercise.Id == swap) ?? Lines.FirstOrDefault(line => line.Line.Item.Id == item);
}

/// <summary>One exercise as somebody does it, on every ladder it can be loaded from.</summary>
public sealed record BoardLine(WorkLine Line, ValueList<LineLoad> Loads);

/// <summary>A weight on a ladder.</summary>
/// <param name="Ladder">Of <see cref="BoardSheet.Ladders"/>.</param>
/// <param name="At">The place on it; null where no weight is known.</param>
/// <param name="ByLeft">The place for the sets that follow, by the repetitions that the first one left; none where it tells nothing.</param>
public sealed record LineLoad(int Ladder, int? At, ValueList<int> ByLeft);
