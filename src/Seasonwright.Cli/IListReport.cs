using Seasonwright.Core;
using Seasonwright.Documents.Read;

namespace Seasonwright.Cli;

/// <summary>What the readers of lists give in common, whatever the list is of.</summary>
internal interface IListReport<TLine>
{
    /// <summary>The list.</summary>
    string File { get; }

    /// <summary>The lines of its table, in their order.</summary>
    IReadOnlyList<TLine> Lines { get; }

    /// <summary>Those of the list and those of its comparison.</summary>
    IReadOnlyList<Question> Questions { get; }

    ValueList<Skipped> Skipped { get; }

    ValueList<Problem> Problems { get; }
}
