using System.Collections.Concurrent;
using System.Text.Json;

namespace Seasonwright.Wire;

/// <summary>Reads values whose type only the key says.</summary>
internal abstract class PlaceValue
{
    private static readonly ConcurrentDictionary<Type, PlaceValue> ByType = new();

    public static PlaceValue Of(Type type) => ByType.GetOrAdd(type, key => (PlaceValue)Activator.CreateInstance(typeof(Typed<>).MakeGenericType(key))!);

    public abstract object Read(ref Utf8JsonReader reader, JsonSerializerOptions options);

    private sealed class Typed<T> : PlaceValue
        where T : notnull
    {
        public override object Read(ref Utf8JsonReader reader, JsonSerializerOptions options) => WireText.Value<T>(ref reader, options);
    }
}
