using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Says what a match loads in this sport.</summary>
public sealed record SetMatchLoad(MatchLoad Load) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-match-load");

    internal override void Decide(Draft draft)
    {
        draft.Set(SetupFacets.MatchLoad, default, Load);
    }
}
