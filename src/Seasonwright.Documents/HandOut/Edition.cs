using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut;

/// <summary>Which state of a season is handed out. Everything that leaves says it, with the team.</summary>
/// <param name="Version">The published version; null for a draft that nobody has published.</param>
/// <param name="Day">When it was published; of a draft, when it was handed out.</param>
public sealed record Edition(Publication? Version, DateOnly Day)
{
    public bool IsDraft => Version is null;

    /// <summary>"Version 3 (after the cup), Mon 11 Oct 2027" or "Draft, Mon 11 Oct 2027".</summary>
    public string Words(LocaleSettings locale) => Version switch
    {
        null => Say("edition.draft", Day.Long(locale)),
        { Name: { } name } => Say("edition.named", Version.Number, name, Day.Long(locale)),
        _ => Say("edition.numbered", Version.Number, Day.Long(locale)),
    };
}
