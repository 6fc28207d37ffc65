using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Wire;

/// <summary>
/// How the values of Core are written: camelCase, properties in the order the records declare them, nothing for null, ISO days,
/// enums as words, LF. The same value gives the same bytes on every machine.
/// </summary>
public static class WireOptions
{
    /// <summary>For the log and for hashing: one line.</summary>
    public static JsonSerializerOptions Compact { get; } = Make(indented: false, weekIds: null);

    /// <summary>For files that people look into.</summary>
    public static JsonSerializerOptions Readable { get; } = Make(indented: true, weekIds: null);

    /// <summary>Reads edits written by hand for one season: where a week id stands, a week number or an ISO day does too.</summary>
    public static JsonSerializerOptions For(Season season) => Make(indented: false, season);

    private static JsonSerializerOptions Make(bool indented, Season? weekIds)
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            RespectNullableAnnotations = true,
            RespectRequiredConstructorParameters = true,
            AllowDuplicateProperties = false,
            MaxDepth = 32,
            AllowOutOfOrderMetadataProperties = true,
            WriteIndented = indented,
            NewLine = "\n",
            // Names keep their letters; the text is a file or a database column, never part of a page.
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { EditNames.Discriminate } },
        };
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false));
        options.Converters.Add(new WeekIdConverter(weekIds));
        options.Converters.Add(new SubjectConverter());
        options.Converters.Add(new QuantityConverter());
        options.Converters.Add(new TimeOfDayConverter());
        options.Converters.Add(new DaySpanConverter());
        options.Converters.Add(new ValueListConverter());
        options.Converters.Add(new FactSetConverter());
        options.Converters.Add(new StepConverter());
        options.MakeReadOnly();
        return options;
    }
}
