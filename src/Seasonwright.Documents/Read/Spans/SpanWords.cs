using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Spans;

/// <summary>Names of months and days of the week as far as a line of prose may hold them: words that mean something else more often are left out.</summary>
internal static class SpanWords
{
    // "3 weeks ago", "2 sets", "12 out", "set 4", "man", "per son".
    private static readonly string[] OtherWords = ["ago", "set", "out", "mag", "gen", "man", "son", "dim", "dom", "don", "vie", "mar", "sam", "ons", "tor", "vin", "maja", "sty", "kwi", "gru"];

    public static int? Month(SpanToken word) => word.Kind == SpanTokenKind.Word && (word.Text == "mar" || !OtherWords.Contains(word.Text)) ? CalendarWords.Month(word.Raw) : null;

    public static DayOfWeek? Weekday(SpanToken word) => word.Kind == SpanTokenKind.Word && !OtherWords.Contains(word.Text) ? CalendarWords.Weekday(word.Raw) : null;

    /// <summary>"Wednesdays", "mittwochs": every such day.</summary>
    public static DayOfWeek? EveryWeekday(SpanToken word) =>
        word is { Kind: SpanTokenKind.Word, Raw: [_, _, _, _, _, .., 's' or 'S'] } && CalendarWords.Weekday(word.Raw) is null ? CalendarWords.Weekday(word.Raw[..^1]) : null;
}
