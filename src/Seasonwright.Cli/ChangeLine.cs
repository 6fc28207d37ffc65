using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Cli;

/// <summary>What a fixture list does to one match that was known, or what it adds.</summary>
/// <param name="Change">unchanged, added, moved, time, time now known, venue swapped, changed, postponed, cancelled, vanished, or asked: nothing holds before an answer.</param>
/// <param name="Match">The list's own number of the match.</param>
/// <param name="Line">The list's row; null for a match that vanished.</param>
/// <param name="Fields">What differs, by the names of the columns.</param>
internal sealed record ChangeLine(string Change, string? Match, int? Line, DateOnly? Date, string? Opponent, IReadOnlyList<FieldChange> Fields, IReadOnlyList<string> Ask)
{
    public static ChangeLine Of(FixtureChange change) => new(
        Word(change.Kind), change.Row?.SourceId ?? change.Known?.Source?.Id, change.Row?.Line, change.Row?.Day ?? change.Known?.Day, change.Row?.Club ?? change.Known?.Opponent,
        [.. change.Fields.Select(Column)], change.Ask);

    public static string Word(ChangeKind kind) => kind switch
    {
        ChangeKind.TimeKnown => "time now known",
        ChangeKind.VenueSwapped => "venue swapped",
        _ => kind.ToString().ToLowerInvariant(),
    };

    // By the columns' names and words.
    private static FieldChange Column(FieldChange field) => field.Field switch
    {
        "day" => field with { Field = "date" },
        "lastDay" => field with { Field = "date_to" },
        "kickOff" => field with { Field = "kickoff" },
        "source" => field with { Field = "source_id" },
        "venue" or "status" => field with { Before = field.Before.ToLowerInvariant(), After = field.After.ToLowerInvariant() },
        _ => field,
    };
}
