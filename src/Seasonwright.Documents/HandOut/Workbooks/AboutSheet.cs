using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>What the workbook is, what its columns mean, and what it must not be taken for.</summary>
internal static class AboutSheet
{
    /// <summary>The name of the cell with the AU of a normal hard week.</summary>
    public const string HardWeek = "NormalHardWeek";

    private static readonly string[] Topics =
        ["first-day", "weeks", "matches", "phase", "block", "load", "au", "practices", "emphasis", "own", "status", "outside", "groups", "medical", "prediction"];

    public static Sheet Of(Setup setup, Edition edition)
    {
        List<(string Topic, object Line)> lines =
        [
            (Say("about.edition"), edition.Words(setup.Locale)),
            (Say("about.hard-week"), (decimal)setup.ReferenceWeek.Au),
            .. Topics.Select(topic => (Say($"about.{topic}"), (object)Say($"about.{topic}.line"))),
        ];
        var sheet = new ListSheet<(string Topic, object Line)>("About", lines)
            .Add(Say("about.topic"), 24, (line, _) => new(line.Topic, SheetLooks.Strong))
            .Add(Say("about.line"), 104, (line, _) => new(line.Line, line.Line is decimal ? SheetLooks.Au with { Side = CellSide.Left } : SheetLooks.Wrapped))
            .Sheet(Say(edition.IsDraft ? "about.draft" : "about.published"));
        return sheet with { Names = [(HardWeek, FormattableString.Invariant($"About!$B${Sheet.FirstRow + 1}"))] };
    }
}
