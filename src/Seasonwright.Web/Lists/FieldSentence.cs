using System.Globalization;
using Seasonwright.Core.Setups;
using Seasonwright.Documents;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Web.Year;

namespace Seasonwright.Web.Lists;

/// <summary>How the tables of a list tell what differs from before.</summary>
internal static class FieldSentence
{
    /// <summary>"day: Sat 5 Sep → Sun 6 Sep", one for each field a person can see.</summary>
    public static IEnumerable<string> Of(IEnumerable<FieldChange> fields, LocaleSettings locale) => fields
        .Where(field => field.Field is not ("source" or "vanished"))
        .Select(field => Words.Say("change.field", Words.Say($"field.{field.Field}"), Value(field.Field, field.Before, locale), Value(field.Field, field.After, locale)));

    private static string Value(string field, string text, LocaleSettings locale) => field switch
    {
        _ when text.Length == 0 => Words.Say("field.nothing"),
        "day" or "lastDay" => DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture).Short(locale),
        "kind" => Words.Say($"event.{text}"),
        "venue" => Words.Say($"venue.{text}"),
        "status" => Words.Say($"status.{text}"),
        _ => text,
    };
}
