using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>An event as its line has it, before years, order and questions are settled.</summary>
/// <param name="Kind">Other for a test day.</param>
/// <param name="IsTest">It is a test day.</param>
/// <param name="Span">Null where no days can be read.</param>
/// <param name="When">What stands where the days should stand.</param>
/// <param name="Remarks">What else is said, piece by piece.</param>
internal sealed record EventLine(int Line, string Raw, EventKind Kind, bool IsTest, string Title, FoundSpan? Span, string When, IReadOnlyList<string> Remarks)
{
    public string? For { get; init; }

    public string? Place { get; init; }

    public string? Part { get; init; }

    /// <summary>The cell of a column for the share of training.</summary>
    public string? Share { get; init; }

    /// <summary>Cells of a leg of a journey.</summary>
    public LegCells? Leg { get; init; }
}

/// <summary>A leg as its row has it.</summary>
/// <param name="Trip">What rows of one trip share: its number in the list, else its title; null for a row that is a trip of its own.</param>
internal sealed record LegCells(string? Trip, string From, string To, string Departs, string Arrives);
