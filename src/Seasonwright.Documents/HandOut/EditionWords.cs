using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut;

/// <summary>How an edition is told.</summary>
public static class EditionWords
{
    /// <summary>"Version 3 (after the cup), Mon 11 Oct 2027" or "Draft, Mon 11 Oct 2027".</summary>
    public static string Words(this Edition edition, LocaleSettings locale) => edition.Version switch
    {
        null => Say("edition.draft", edition.Day.Long(locale)),
        { Name: { } name } version => Say("edition.named", version.Number, name, edition.Day.Long(locale)),
        { } version => Say("edition.numbered", version.Number, edition.Day.Long(locale)),
    };
}
