using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Seasonwright.Core.Edits;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Web.Year;

/// <summary>
/// Edits with gaps, as forms and menus carry them: "$first" and "$last" are the chosen weeks, "$day" and "$lastDay" the chosen
/// days, "$new" a new id. The page's script fills them in (forms.js).
/// </summary>
internal static class Template
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <param name="values">An anonymous object, or several of them, in the form of docs/edits.md.</param>
    public static string Of(object values) => JsonSerializer.Serialize(values, Options);

    /// <summary>A whole edit, for a form that changes parts of it.</summary>
    public static string Of(Edit edit) => GestureText.Of(edit);

    /// <summary>A whole edit as a value inside another template.</summary>
    public static JsonNode Node(Edit edit) => JsonNode.Parse(GestureText.Of(edit))!;

    /// <summary>The word an enum's value has on the wire.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());
}
