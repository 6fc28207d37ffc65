using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Boards;

/// <summary>How many athletes an exercise brings to a kind of place in the room at one time, and how many places there are.</summary>
/// <param name="What">A rack with its bar, or what else was counted.</param>
/// <param name="Athletes">Who do it with that; where the squad is parted, of its larger half.</param>
/// <param name="Places">That can be used.</param>
/// <param name="AtOne">Athletes who share one at most.</param>
public sealed record FloorNeed(BoardItem Item, Equipment What, int Athletes, int Places, int AtOne)
{
    public bool IsShort => Athletes > Places * AtOne;

    /// <summary>At the fullest one; everybody where there is none.</summary>
    public int AtFullest => Places == 0 ? Athletes : (Athletes + Places - 1) / Places;

    /// <summary>What is short, in words; of what is not short how it comes out.</summary>
    public string Sentence => Places == 0 ? Sentences.Say("floor.none", Item.Exercise.Name, What.Word(), Athletes)
        : IsShort ? Sentences.Say("floor.short", Item.Exercise.Name, Athletes, Plural(Places), AtFullest, AtOne)
        : Sentences.Say("floor.fits", Item.Exercise.Name, Athletes, Plural(Places), AtFullest);

    private string Plural(int places) => What == Equipment.Rack ? Sentences.Say("floor.racks", places) : Sentences.Say("floor.places", places, What.Word());

    /// <summary>What every exercise of a session needs of what was counted, for whoever is coming.</summary>
    public static ValueList<FloorNeed> Of(BoardSheet sheet, BoardState state)
    {
        var coming = sheet.Athletes.Where(one => one.Work.IsLifting && state.Of(one.Athlete.Id) != Attendance.Away).ToList();
        return
        [
            .. from item in sheet.Items
               let done = coming.Select(one => (Half: state.HalfOf(one.Athlete.Id), Line: state.LineOf(one, item.Item.Item.Id))).Where(one => one.Line is not null).ToList()
               from what in done.SelectMany(one => NeededBy(one.Line!.Line.Exercise)).Distinct().Order()
               let places = PlacesOf(sheet.Gym, state, what)
               where places is not null
               select new FloorNeed(item, what, done.Where(one => NeededBy(one.Line!.Line.Exercise).Contains(what)).GroupBy(one => one.Half).Max(half => half.Count()), places.Value, sheet.Gym.AtOne ?? Gym.UsualAtOne),
        ];
    }

    /// <summary>What an exercise takes up in the room: the bar of a rack, with it or a platform, and what is counted beside.</summary>
    private static IEnumerable<Equipment> NeededBy(Exercise exercise) => (BoardSheet.NeedsRack(exercise) ? new[] { Equipment.Rack } : [])
        .Concat(exercise.Equipment.Where(one => one is not (Equipment.Rack or Equipment.Barbell)));

    /// <summary>Null for what nobody counted.</summary>
    private static int? PlacesOf(Gym gym, BoardState state, Equipment what)
    {
        var usable = state.RacksOf(gym).ToList();
        return what switch { Equipment.Rack => usable.Count, Equipment.Platform => usable.Count(rack => rack.HasPlatform), _ => gym.CountOf(what) };
    }
}
