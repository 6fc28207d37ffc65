using Seasonwright.Core.Seasons;

namespace Seasonwright.Web.Seasons;

/// <summary>What a published version is called.</summary>
internal static class VersionWords
{
    public static string Of(Publication version) => version.Name is { } name
        ? Words.Say("version.named", version.Number, name)
        : Words.Say("version.numbered", version.Number);
}
