using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Sets how the team writes and reads: dates, decimals, week start, paper, mass, zone.</summary>
public sealed record SetLocale(LocaleSettings Locale) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-locale");

    internal override void Decide(Draft draft)
    {
        if (!Calendar.KickOff.IsZone(Locale.Zone)) draft.Refuse("zone-unknown", "locale.zone", Locale.Zone);
        draft.Set(SetupFacets.Locale, default, Locale);
    }
}
