using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core.Facts;

namespace Seasonwright.Wire;

/// <summary>Ids and other subjects of keys are written as their text.</summary>
internal sealed class SubjectConverter : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsValueType
        && typeToConvert.GetInterfaces().Any(face => face.IsGenericType && face.GetGenericTypeDefinition() == typeof(ISubject<>));

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Of<>).MakeGenericType(typeToConvert))!;

    private sealed class Of<T> : JsonConverter<T>
        where T : struct, ISubject<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            WireText.Parse(ref reader, T.Parse);

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
    }
}
