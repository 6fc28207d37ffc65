using Seasonwright.Core;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Cli;

/// <summary>Everything <c>fixtures</c> knows about a list, as scripts get it; docs/commands.md describes the fields.</summary>
internal sealed record FixtureReport(
    string File, string? Team, ValueList<TeamFound> Teams, FixtureReads Reads, IReadOnlyList<FixtureLine> Rows, IReadOnlyList<Question> Questions, IReadOnlyList<Answered> Answered,
    ValueList<Skipped> Skipped, ValueList<Problem> Problems, IReadOnlyList<ChangeLine> Changes, ValueList<string> Notes) : IListReport<FixtureLine>
{
    IReadOnlyList<FixtureLine> IListReport<FixtureLine>.Lines => Rows;

    /// <param name="notes">Of the comparison; without one, of the list alone.</param>
    public static FixtureReport Of(FixtureList list, FixtureUpdate? update, ValueList<string> notes) => new(
        list.Name, list.Team, list.Teams, list.Reads, FixtureLine.Of(list, update),
        [.. list.Questions, .. update?.Questions ?? []], [.. list.Answered, .. update?.Answered ?? []],
        list.Skipped, list.Problems, [.. update?.Changes.Select(ChangeLine.Of) ?? []], notes);
}
