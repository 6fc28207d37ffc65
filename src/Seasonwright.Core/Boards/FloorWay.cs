using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Boards;

/// <summary>A way of sharing the room.</summary>
public enum FloorWayKind
{
    /// <summary>Everybody at once, spread over the racks.</summary>
    Together,

    /// <summary>Half A begins at the racks, half B with the rest; then they change.</summary>
    Split,

    /// <summary>So many as are too many do an exercise that needs no rack.</summary>
    OtherBars,

    /// <summary>Half A does all of it, then half B.</summary>
    Waves,
}

/// <summary>A way of sharing the room, ready to take. Who lifts about the same shares a rack, so that few plates are changed; heavier bars go to who lifts more. Common practice, no source.</summary>
/// <param name="Sentence">It in words.</param>
/// <param name="Minutes">It takes about, with what gets ready.</param>
/// <param name="Turns">Who is where when; none where all do all of it at once.</param>
/// <param name="Swaps">What else is done by whom.</param>
public sealed record FloorWay(FloorWayKind Kind, string Sentence, int Minutes, ValueList<FloorStand> Stands, ValueList<FloorTurn> Turns, ValueList<FloorSwap> Swaps)
{
    /// <summary>Every way that there is for those who are coming: all at once first, then those that help where something is short.</summary>
    public static ValueList<FloorWay> Of(BoardSheet sheet, BoardState state) => new Room(sheet, state).Ways().ToValueList();

    /// <summary>The room while ways are looked for in it.</summary>
    private sealed class Room
    {
        private readonly BoardSheet sheet;
        private readonly BoardState state;
        private readonly List<BoardAthlete> lifters;
        private readonly List<GymRack> racks;
        private readonly ValueList<FloorNeed> needs;
        private readonly int atOne;

        public Room(BoardSheet sheet, BoardState state)
        {
            (this.sheet, this.state, atOne) = (sheet, state, sheet.Gym.AtOne ?? Gym.UsualAtOne);
            // Of all at once: how the room is shared now is what is looked at anew.
            needs = FloorNeed.Of(sheet, state with { Way = null });
            racks = [.. state.RacksOf(sheet.Gym).OrderByDescending(rack => rack.Bar.Kilograms)];
            // The heaviest first; who has no weight yet comes last.
            lifters = [.. sheet.Athletes.Where(one => one.Work.IsLifting && state.Of(one.Athlete.Id) != Attendance.Away && RackLines(one).Any())
                .OrderByDescending(one => RackLines(one).Select(line => line.Line.Load.Target?.Kilograms).FirstOrDefault() ?? -1)];
        }

        public IEnumerable<FloorWay> Ways()
        {
            var minutes = Minutes(lifters.Count);
            yield return new(FloorWayKind.Together, Sentences.Say("floor.together", lifters.Count, racks.Count, Fullest(lifters.Count), Told(minutes)), minutes, Spread(lifters, null), [], []);
            if (!needs.Any(need => need.IsShort && need.What == Equipment.Rack) || racks.Count == 0) yield break;
            if (Split() is { } split) yield return split;
            if (OtherBars() is { } other) yield return other;
            yield return Waves();
        }

        private FloorWay? Split()
        {
            var work = sheet.Workout.Parts.Where(part => part.Part.IsWork).ToList();
            var (atRacks, rest) = (work.Where(IsAtRacks).ToList(), work.Where(part => !IsAtRacks(part)).ToList());
            var half = (lifters.Count + 1) / 2;
            if (rest.Count == 0 || half > racks.Count * atOne) return null;
            var (ready, turn) = (ReadySeconds, Math.Max(Seconds(atRacks, Fullest(half)), Seconds(rest, 1)));
            var (from, change, end) = (Whole(ready), Whole(ready + turn), Whole(ready + 2 * turn));
            return new(FloorWayKind.Split, Sentences.Say("floor.split", Letters(atRacks), Letters(rest), change, Fullest(half), Told(end)), end, Parted(),
                [new(from, change, SquadHalf.A, Letters(atRacks)), new(from, change, SquadHalf.B, Letters(rest)), new(change, end, SquadHalf.A, Letters(rest)), new(change, end, SquadHalf.B, Letters(atRacks))], []);
        }

        private FloorWay Waves()
        {
            var half = (lifters.Count + 1) / 2;
            var wave = Minutes(half);
            var all = Letters([.. sheet.Workout.Parts.Where(part => part.Part.IsWork)]);
            return new(FloorWayKind.Waves, Sentences.Say("floor.waves", wave, Fullest(half), Told(2 * wave)), 2 * wave, Parted(), [new(0, wave, SquadHalf.A, all), new(wave, 2 * wave, SquadHalf.B, all)], []);
        }

        private FloorWay? OtherBars()
        {
            var (swaps, told) = (new List<FloorSwap>(), new List<string>());
            foreach (var need in needs.Where(need => need.IsShort && need.What == Equipment.Rack))
            {
                var (id, tooMany) = (need.Item.Item.Item.Id, need.Athletes - need.Places * atOne);
                // Who lifts least finds what else there is heavy enough soonest.
                var best = need.Item.Swaps.Where(swap => !BoardSheet.NeedsRack(swap) && swap.Equipment.All(one => sheet.Gym.CountOf(one) is not { } count || count * atOne >= tooMany))
                    .Select(swap => (Swap: swap, Who: lifters.AsEnumerable().Reverse().Where(one => state.LineOf(one, need.Item.Item.Item.Id) is { } line && BoardSheet.NeedsRack(line.Line.Exercise) && one.Line(id, swap.Id)?.Line.Exercise.Id == swap.Id).Take(tooMany).ToList()))
                    .FirstOrDefault(swap => swap.Who.Count == tooMany);
                if (best.Swap is null) return null;
                swaps.AddRange(best.Who.Select(one => new FloorSwap(one.Athlete.Id, id, best.Swap.Id)));
                told.Add(Sentences.Say("floor.other-bar", tooMany, best.Swap.Name, need.Item.Exercise.Name));
            }
            var without = swaps.Select(swap => swap.Person).ToHashSet();
            var left = lifters.Where(one => !without.Contains(one.Athlete.Id)).ToList();
            var minutes = Minutes(left.Count);
            return new(FloorWayKind.OtherBars, Sentences.Say("floor.other-bars", string.Join("; ", told), Fullest(left.Count), Told(minutes)), minutes,
                [.. Spread(left, null), .. lifters.Except(left).Select(one => new FloorStand(one.Athlete.Id, null, null))], [], swaps.ToValueList());
        }

        /// <summary>Neighbours by weight, as even as can be; everybody elsewhere where there is no rack.</summary>
        private ValueList<FloorStand> Spread(List<BoardAthlete> who, SquadHalf? half) => racks.Count == 0 ? [.. who.Select(one => new FloorStand(one.Athlete.Id, null, half))]
            : [.. who.Select((one, at) => new FloorStand(one.Athlete.Id, racks[RackAt(at, who.Count)].Name, half))];

        private int RackAt(int at, int count)
        {
            var (least, more) = (count / racks.Count, count % racks.Count);
            return at < more * (least + 1) ? at / (least + 1) : more + (at - more * (least + 1)) / least;
        }

        /// <summary>Every other one of those at a rack is in each half, so that both halves find their plates there.</summary>
        private ValueList<FloorStand> Parted() =>
            [.. Spread([.. lifters.Where((_, at) => at % 2 == 0)], SquadHalf.A), .. Spread([.. lifters.Where((_, at) => at % 2 == 1)], SquadHalf.B)];

        private IEnumerable<BoardLine> RackLines(BoardAthlete one) => sheet.Items.Select(item => state.LineOf(one, item.Item.Item.Id)).OfType<BoardLine>().Where(line => BoardSheet.NeedsRack(line.Line.Exercise));

        private bool IsAtRacks(WrittenPart part) => sheet.Items.Any(item => item.Part == part && item.NeedsRack);

        private int Fullest(int count) => racks.Count == 0 ? count : (count + racks.Count - 1) / racks.Count;

        private int ReadySeconds => Seconds([.. sheet.Workout.Parts.Where(part => !part.Part.IsWork)], 1);

        private int Minutes(int count) => Whole(ReadySeconds + Seconds([.. sheet.Workout.Parts.Where(part => part.Part.IsWork)], Math.Max(1, Fullest(count))));

        private int Seconds(List<WrittenPart> parts, int sharing) => parts.Sum(part => PartTime.Seconds(part, sheet.Exercise, IsAtRacks(part) ? sharing : 1));

        private static int Whole(int seconds) => (seconds + 59) / 60;

        private string Told(int minutes) => minutes > sheet.Session.Minutes.Value ? Sentences.Say("floor.minutes-over", minutes, sheet.Session.Minutes.Value) : Sentences.Say("floor.minutes", minutes, sheet.Session.Minutes.Value);

        /// <summary>"A, C".</summary>
        private string Letters(List<WrittenPart> parts) => string.Join(", ", sheet.Items.Where(item => parts.Contains(item.Part)).Select(item => item.Place[..1]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }
}

/// <summary>Where somebody lifts.</summary>
/// <param name="Rack">Null for elsewhere.</param>
/// <param name="Half">Null where the squad is not parted.</param>
public sealed record FloorStand(PersonId Person, string? Rack, SquadHalf? Half);

/// <summary>What a half does from one minute of the session to another.</summary>
/// <param name="Parts">Their letters.</param>
public sealed record FloorTurn(int From, int To, SquadHalf Half, string Parts);

/// <summary>What else somebody does.</summary>
public sealed record FloorSwap(PersonId Person, WorkoutItemId Item, ExerciseId Exercise);
