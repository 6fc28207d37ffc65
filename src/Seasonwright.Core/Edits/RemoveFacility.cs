using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>Takes a facility away. Sessions that were in it keep their times, and are in no room.</summary>
public sealed record RemoveFacility(RoomId Facility) : ClubEdit
{
    public override string Describe(Club club) => Sentences.Say("did.remove-facility", club.Facility(Facility)?.Room.Name ?? Facility.Text);

    internal override void Decide(Draft draft)
    {
        if (draft.Find(ClubFacets.Facility, Facility) is null) draft.Refuse("facility-unknown", SetFacility.SubjectOf(Facility), Facility);
        draft.Remove(ClubFacets.Facility, Facility);
    }
}
