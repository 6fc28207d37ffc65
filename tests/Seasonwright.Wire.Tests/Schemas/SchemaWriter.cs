using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Wire.Tests.Schemas;

/// <summary>
/// Writes the published JSON Schemas (draft 2020-12) from what the wire itself knows of its types: names, what must be given, what
/// may be null, words and bounds, with the descriptions that stand at the records.
/// </summary>
/// <param name="byHand">For edits typed by people, who name weeks by number or day too.</param>
public sealed class SchemaWriter(bool byHand)
{
    private const string Id = "[A-Za-z0-9._-]{1,64}", Day = "[0-9]{4}-[0-9]{2}-[0-9]{2}";

    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly SortedDictionary<string, JsonNode> defined = new(StringComparer.Ordinal);

    public static string Season()
    {
        var writer = new SchemaWriter(byHand: false);
        return writer.Text("Seasonwright season file", "One season and its team's setup. The facts lie by family and subject; a family of one place has the subject \"\".", Object(
            ["format", "version", "id", "teamId", "season", "team"],
            ("format", new JsonObject { ["const"] = SeasonFile.Format }),
            ("version", new JsonObject { ["const"] = SeasonFile.Version }),
            ("id", writer.Of(typeof(SeasonId))),
            ("teamId", writer.Of(typeof(TeamId))),
            ("season", writer.Facts(SeasonFacets.All, SeasonFacets.Frame.Name)),
            ("team", writer.Facts(SetupFacets.All)),
            ("edition", Object(["version", "day"], ("version", new JsonObject { ["type"] = "integer", ["minimum"] = 1 }), ("day", writer.Of(typeof(DateOnly)))))));
    }

    public static string Room()
    {
        var writer = new SchemaWriter(byHand: false);
        return writer.Text("Seasonwright room file", "One room's week: what it holds, what each team asks for and where it stands; room-file.md beside this file has an example.", Object(
            ["format", "version", "first", "room", "teams"],
            ("format", new JsonObject { ["const"] = RoomFile.Format }),
            ("version", new JsonObject { ["const"] = RoomFile.Version }),
            ("first", writer.Of(typeof(DateOnly))),
            ("room", writer.Of(typeof(Room))),
            ("teams", writer.Of(typeof(ValueList<RoomTeam>)))));
    }

    public static string Edits()
    {
        var writer = new SchemaWriter(byHand: true);
        var edits = EditNames.All.OrderBy(edit => edit.Key, StringComparer.Ordinal).Select(edit => (JsonNode)writer.Edit(edit.Key, edit.Value)).ToArray();
        return writer.Text("Seasonwright edit", "One line of a list of edits; edits.md beside this file has an example of each.", new JsonObject { ["oneOf"] = new JsonArray(edits) });
    }

    private JsonObject Edit(string name, Type type)
    {
        var edit = Record(type);
        edit["required"] = new JsonArray([EditNames.Property, .. edit["required"]!.AsArray().Select(field => field!.DeepClone())]);
        edit["properties"]!.AsObject().Insert(0, EditNames.Property, new JsonObject { ["const"] = name });
        return Define($"edit.{name}", () => Described(edit, Descriptions.Of(type)));
    }

    private JsonObject Of(Type type)
    {
        if (Nullable.GetUnderlyingType(type) is { } under) return OrNull(Of(under));
        if (type == typeof(string)) return Typed("string");
        if (type == typeof(bool)) return Typed("boolean");
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ValueList<>)) return new JsonObject { ["type"] = "array", ["items"] = Of(type.GetGenericArguments()[0]) };
        return Define(NameOf(type), () => Described(Form(type), Descriptions.Of(type)));
    }

    private JsonObject Form(Type type)
    {
        if (type == typeof(int)) return Whole(int.MinValue, int.MaxValue);
        if (type == typeof(decimal)) return new JsonObject { ["type"] = "number", ["minimum"] = decimal.MinValue, ["maximum"] = decimal.MaxValue };
        if (type == typeof(Load)) return Whole(0, Load.Most);
        if (type == typeof(Percent)) return Whole(0, Percent.Most);
        if (type == typeof(Minutes)) return Whole(0, 1440);
        if (type == typeof(Rpe)) return new JsonObject { ["type"] = "number", ["minimum"] = 0, ["maximum"] = 10, ["multipleOf"] = 0.5 };
        if (type == typeof(Weight)) return Pattern("[0-9]{1,4}(\\.[0-9]{1,6})? ?(kg|lb)");
        if (type == typeof(Tempo)) return Pattern("[0-9]{1,2}-[0-9]{1,2}-([0-9]{1,2}|X)-[0-9]{1,2}");
        if (type == typeof(DateOnly)) return new JsonObject { ["type"] = "string", ["format"] = "date", ["pattern"] = $"^{Day}$" };
        if (type == typeof(TimeOnly)) return Pattern("([01][0-9]|2[0-3]):[0-5][0-9]");
        if (type == typeof(DaySpan)) return Object(["first", "last"], ("first", Of(typeof(DateOnly))), ("last", Of(typeof(DateOnly))));
        if (type == typeof(FactSet)) return Facts([.. SeasonFacets.All, .. SetupFacets.All]);
        if (byHand && (type == typeof(WeekId) || type == typeof(CellPlace)))
            return new JsonObject { ["anyOf"] = new JsonArray(Of(typeof(int)), Of(typeof(DateOnly)), Pattern(SubjectPattern(type))) };
        if (type.IsEnum) return new JsonObject { ["enum"] = new JsonArray([.. Enum.GetNames(type).Select(word => (JsonNode)JsonNamingPolicy.CamelCase.ConvertName(word))]) };
        return IsSubject(type) ? Pattern(SubjectPattern(type)) : Record(type);
    }

    private static string NameOf(Type type) =>
        type == typeof(int) ? "wholeNumber"
        : type == typeof(decimal) ? "number"
        : type == typeof(DateOnly) ? "day"
        : type == typeof(TimeOnly) ? "timeOfDay"
        : type == typeof(FactSet) ? "facts"
        : JsonNamingPolicy.CamelCase.ConvertName(type.Name);

    private JsonObject Record(Type type)
    {
        var fields = (byHand ? WireOptions.For(Core.Seasons.Season.Empty(new SeasonId("s"))) : WireOptions.Readable).GetTypeInfo(type).Properties;
        return Object(fields.Where(field => field.IsRequired).Select(field => field.Name), [.. fields.Select(field => (field.Name, Field(type, field)))]);
    }

    private JsonObject Field(Type type, JsonPropertyInfo field)
    {
        var value = Of(field.PropertyType);
        if (!field.PropertyType.IsValueType && field.AssociatedParameter is { IsNullable: true }) value = OrNull(value);
        return Described(value, Descriptions.Of(type, field.AssociatedParameter!.Name));
    }

    /// <summary>Values by family of places and by subject.</summary>
    private JsonObject Facts(IEnumerable<Facet> facets, params string[] required) => Object(required, [.. facets.Select(facet => (facet.Name, new JsonObject
    {
        ["type"] = "object",
        ["propertyNames"] = new JsonObject { ["pattern"] = $"^{SubjectPattern(facet.GetType().GetGenericArguments()[0])}$" },
        ["additionalProperties"] = Of(facet.ValueType),
    }))]);

    private static bool IsSubject(Type type) => type.GetInterfaces().Any(face => face.IsGenericType && face.GetGenericTypeDefinition() == typeof(ISubject<>));

    private static string SubjectPattern(Type type) =>
        type == typeof(Only) ? ""
        : type == typeof(VersionNumber) ? "[0-9]{1,10}"
        : type == typeof(FindingKey) ? $"{Id}:{Id}:{Id}(/{Id})*"
        : type == typeof(RuleParameter) ? $"{Id}:{Id}"
        : type == typeof(CellPlace) ? $"(w={Id}|d={Day})"
        : type.IsGenericType ? string.Join(':', type.GetGenericArguments().Select(SubjectPattern))
        : Id;

    private static JsonObject Object(IEnumerable<string> required, params (string Name, JsonObject Schema)[] fields) => new()
    {
        ["type"] = "object",
        ["required"] = new JsonArray([.. required.Select(name => (JsonNode)name)]),
        ["properties"] = new JsonObject([.. fields.Select(field => KeyValuePair.Create(field.Name, (JsonNode?)field.Schema))]),
        ["additionalProperties"] = false,
    };

    private static JsonObject Typed(string type) => new() { ["type"] = type };

    private static JsonObject Whole(int least, int most) => new() { ["type"] = "integer", ["minimum"] = least, ["maximum"] = most };

    private static JsonObject Pattern(string pattern) => new() { ["type"] = "string", ["pattern"] = $"^{pattern}$" };

    private static JsonObject OrNull(JsonObject schema) => new() { ["anyOf"] = new JsonArray(schema, Typed("null")) };

    private static JsonObject Described(JsonObject schema, string? words)
    {
        if (words is not null) schema["description"] = words;
        return schema;
    }

    /// <summary>A type is described once, where it is first met.</summary>
    private JsonObject Define(string name, Func<JsonObject> schema)
    {
        if (!defined.ContainsKey(name)) defined[name] = schema();
        return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
    }

    private string Text(string title, string words, JsonObject root)
    {
        var text = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = title, ["description"] = words };
        foreach (var (name, value) in root) text[name] = value?.DeepClone();
        text["$defs"] = new JsonObject(defined.Select(entry => KeyValuePair.Create(entry.Key, (JsonNode?)entry.Value)));
        return text.ToJsonString(Layout) + "\n";
    }
}
