using Seasonwright.Core;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Squads;

namespace Seasonwright.Cli;

/// <summary>Everything <c>squad</c> knows about a list, as scripts get it; docs/commands.md describes the fields.</summary>
internal sealed record SquadReport(
    string File, SquadReads Reads, string? Team, IReadOnlyList<SquadLine> Rows, IReadOnlyList<Question> Questions, IReadOnlyList<Answered> Answered,
    ValueList<Skipped> Skipped, ValueList<HeldBack> HeldBack, ValueList<Problem> Problems) : IListReport<SquadLine>
{
    IReadOnlyList<SquadLine> IListReport<SquadLine>.Lines => Rows;

    public static SquadReport Of(SquadList list) => new(
        list.Name, list.Reads, list.Team, [.. list.Rows.Select(SquadLine.Of)], list.Questions, list.Answered, list.Skipped, list.HeldBack, list.Problems);
}
