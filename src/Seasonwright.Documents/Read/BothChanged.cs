using System.Globalization;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read;

/// <summary>The question whose change holds, where the coach and a list have both changed the same.</summary>
internal static class BothChanged
{
    /// <param name="kind">The sentences that ask it.</param>
    /// <param name="about">What has been changed, in any file.</param>
    /// <param name="between">From the coach's state to the list's.</param>
    /// <returns>"ours", "list", or open.</returns>
    public static Asked Ask(Asker asker, string kind, string about, ValueList<FieldChange> between, int line, string name) => asker.Ask(
        kind, string.Join('|', between.Select(field => $"{field.Before} {field.After}").Prepend(about)), [line],
        [Option("ours", between, field => field.Before), Option("list", between, field => field.After)], [line, name], name: "Q-both-changed");

    private static AnswerOption Option(string id, ValueList<FieldChange> between, Func<FieldChange, string> state)
    {
        var days = Days(Of("day"), Of("lastDay"));
        var others = between.Where(field => field.Field is not ("day" or "lastDay")).Select(field => Words(field.Field, state(field)));
        return Asker.Option("both-changed", id, string.Join(", ", days is null ? others : others.Prepend(days)));

        string? Of(string field) => between.Where(change => change.Field == field).Select(state).FirstOrDefault();
    }

    /// <summary>The days in words: null where they do not differ.</summary>
    private static string? Days(string? first, string? last) => (first, last) switch
    {
        (null, null) => null,
        ("", _) or (null, "") => Unknown,
        (null, _) => Sentences.Say("days.last", Day(last)),
        _ when string.IsNullOrEmpty(last) || last == first => Sentences.Say("days.one", Day(first)),
        _ => Sentences.Say("days.span", Day(first), Day(last)),
    };

    private static string Words(string field, string text) => field switch
    {
        _ when text.Length == 0 => Unknown,
        "kind" => Sentences.Say($"event.{text}"),
        "provisional" => Sentences.Say($"provisional.{text}"),
        "venue" or "status" => text.ToLowerInvariant(),
        _ => text,
    };

    private const string Unknown = "-";

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
