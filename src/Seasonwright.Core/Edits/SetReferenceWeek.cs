using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Sets the AU of 100 % on the load scale; null takes them from the usual week again.</summary>
public sealed record SetReferenceWeek(Quantities.Load? Load) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-reference-week");

    internal override void Decide(Draft draft)
    {
        draft.SetOrRemove(SetupFacets.ReferenceWeek, default, Load);
    }
}
