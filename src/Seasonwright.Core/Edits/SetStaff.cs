using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Puts a person on the season's staff, changes the role, or (no role) takes the person off it. Names are rows outside the log.</summary>
public sealed record SetStaff(PersonId Person, StaffRole? Role) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Role is { } role ? Sentences.Say("did.set-staff", Sentences.Say($"staff.{role}")) : Sentences.Say("did.remove-staff");

    internal override void Decide(SeasonDraft draft)
    {
        if (Role is { } role) draft.Set(SeasonFacets.Staff, Person, role);
        else draft.Remove(SeasonFacets.Staff, Person);
    }
}
