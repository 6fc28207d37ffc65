using System.Globalization;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>Adds a facility of the club, or says anew when it is open, what it holds and what there is in it.</summary>
public sealed record SetFacility(Facility Facility) : ClubEdit
{
    public override string Describe(Club club) => Sentences.Say(club.Facility(Facility.Room.Id) is null ? "did.add-facility" : "did.set-facility", Facility.Room.Name);

    internal override void Decide(Draft draft)
    {
        Check(draft, Facility);
        var (id, name) = (Facility.Room.Id, Facility.Room.Name);
        if (draft.Facts.All(ClubFacets.Facility).Any(other => other.Subject != id && string.Equals(other.Value.Room.Name, name, StringComparison.OrdinalIgnoreCase)))
            draft.Refuse("facility-name", $"{SubjectOf(id)}.name", name);
        draft.Set(ClubFacets.Facility, id, Facility);
    }

    internal static string SubjectOf(RoomId id) => $"facility/{id}";

    /// <summary>What a facility must be by itself, whatever others there are.</summary>
    internal static void Check(Draft draft, Facility facility)
    {
        var (room, subject) = (facility.Room, SubjectOf(facility.Room.Id));
        draft.Require(room.Name, $"{subject}.name", RoomSound.LongestName);
        Within(room.Places, 1, Room.MostPlaces, "places");
        Within(room.Coaches, 1, Room.MostCoaches, "coaches");
        Within(room.Open.Count, 1, Facility.MostHours, "open");
        Within(room.Closed?.Count ?? 0, 0, Facility.MostClosed, "closed");
        foreach (var day in room.Open.GroupBy(hours => hours.Day))
        {
            var field = string.Create(CultureInfo.InvariantCulture, $"{subject}.open.{day.Key}");
            var hours = day.OrderBy(one => one.From).ToList();
            if (hours.Exists(one => !Clock.IsOnGrid(one.From) || !Clock.IsOnGrid(one.To))) draft.Refuse("facility-grid", field);
            else if (hours.Exists(one => one.To <= one.From)) draft.Refuse("facility-backward", field);
            else if (hours.Zip(hours.Skip(1)).Any(pair => pair.Second.From < pair.First.To)) draft.Refuse("facility-overlap", field);
        }
        foreach (var days in room.Closed ?? [])
        {
            draft.RequirePossible(days.First, $"{subject}.closed");
            draft.RequirePossible(days.Last, $"{subject}.closed");
        }
        if (facility.Gym is { } gym) SetGym.Check(draft, gym);

        void Within(int number, int least, int most, string field)
        {
            if (number < least || number > most) draft.Refuse("facility-number", $"{subject}.{field}", number, least, most);
        }
    }
}
