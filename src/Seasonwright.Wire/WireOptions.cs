using System.Runtime.CompilerServices;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Wire;

/// <summary>
/// How the values of Core are written: camelCase, properties in the order the records declare them, optional ones only where they hold something, ISO days,
/// enums as words, LF. The same value gives the same bytes on every machine.
/// </summary>
public static class WireOptions
{
    /// <summary>For the log and for hashing: one line.</summary>
    public static JsonSerializerOptions Compact { get; } = Make(indented: false, weekIds: null);

    /// <summary>For files that people look into.</summary>
    public static JsonSerializerOptions Readable { get; } = Make(indented: true, weekIds: null);

    /// <summary>Reads edits written by hand for one season: where a week id stands, a week number or an ISO day does too.</summary>
    // Options learn every type anew, which takes longer than reading a hundred edits; seasons of one frame number their weeks alike.
    public static JsonSerializerOptions For(Season season) => ByFrame.GetValue(season.Frame, _ => Make(indented: false, season));

    private static readonly ConditionalWeakTable<Frame, JsonSerializerOptions> ByFrame = new();

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
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { EditNames.Discriminate, BoardText.Discriminate, OnlyWhatIsGiven, SayNothingAloud } },
        };
        options.Converters.Add(new WordConverter());
        options.Converters.Add(new DayConverter());
        options.Converters.Add(new WeekIdConverter(weekIds));
        options.Converters.Add(new CellPlaceConverter(weekIds));
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

    /// <summary>What a record works out from its fields is neither written nor read.</summary>
    private static void OnlyWhatIsGiven(JsonTypeInfo info)
    {
        for (var i = info.Properties.Count - 1; i >= 0; i--)
            if (info.Properties[i].Set is null) info.Properties.RemoveAt(i);
    }

    /// <summary>
    /// A field that must be given and may be nothing ("load": null takes the load back) is written as null; only fields that may
    /// be left out are left out.
    /// </summary>
    private static void SayNothingAloud(JsonTypeInfo info)
    {
        foreach (var property in info.Properties)
            if (property.AssociatedParameter is { HasDefaultValue: false }) property.ShouldSerialize = (_, _) => true;
    }
}
