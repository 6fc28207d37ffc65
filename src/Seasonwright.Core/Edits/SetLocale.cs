using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Sets how the team writes and reads: dates, decimals, week start, paper, mass, zone.</summary>
public sealed record SetLocale(LocaleSettings Locale) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-locale");

    internal override void Decide(Draft draft)
    {
        Check(draft, Locale);
        draft.Set(SetupFacets.Locale, default, Locale);
    }

    internal static void Check(Draft draft, LocaleSettings locale)
    {
        if (!Calendar.KickOff.IsZone(locale.Zone)) draft.Refuse("zone-unknown", "locale.zone", locale.Zone);
    }
}
