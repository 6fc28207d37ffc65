using System.Reflection;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Wire.Tests;

/// <summary>Any value of any type that is written: every field of every record, sensible or not, as long as the value can be born.</summary>
public sealed class Arbitrary(int seed)
{
    private readonly NullabilityInfoContext nullability = new();
    private readonly Random random = new(seed);

    public object Value(Type type)
    {
        if (Nullable.GetUnderlyingType(type) is { } under) return Value(under);
        if (type.IsEnum) return random.GetItems(Enum.GetValues(type).Cast<object>().ToArray(), 1)[0];
        if (type == typeof(string)) return Text();
        if (type == typeof(bool)) return random.Next(2) == 0;
        if (type == typeof(int)) return random.Next(4) == 0 ? random.Next(int.MinValue, int.MaxValue) : random.Next(100);
        if (type == typeof(decimal)) return new decimal(random.Next(), random.Next(3), 0, random.Next(2) == 0, (byte)random.Next(10));
        if (type == typeof(DateOnly)) return DateOnly.FromDayNumber(random.Next(DateOnly.MaxValue.DayNumber));
        if (type == typeof(Guid)) return new Guid(random.Next(), 0, 0, new byte[8]);
        if (type == typeof(DateTimeOffset)) return new DateTimeOffset(random.NextInt64(DateTimeOffset.MaxValue.Ticks), TimeSpan.Zero);
        if (type == typeof(TimeOnly)) return new TimeOnly(random.Next(24), random.Next(60));
        if (type == typeof(DaySpan)) return Span();
        if (type == typeof(Load)) return new Load(random.Next(Load.Most + 1));
        if (type == typeof(Percent)) return new Percent(random.Next(Percent.Most + 1));
        if (type == typeof(Minutes)) return new Minutes(random.Next(1441));
        if (type == typeof(Rpe)) return new Rpe(random.Next(21) / 2m);
        if (type == typeof(Weight)) return new Weight(random.Next(1, 2_000) / 4m, (MassUnit)Value(typeof(MassUnit)));
        if (type == typeof(Tempo)) return new Tempo(random.Next(1, 31), random.Next(31), random.Next(3) == 0 ? null : random.Next(31), random.Next(31));
        if (type == typeof(Only)) return default(Only);
        if (type == typeof(CellPlace)) return random.Next(2) == 0 ? CellPlace.Of(new WeekId(Id())) : CellPlace.Of((DateOnly)Value(typeof(DateOnly)));
        if (type == typeof(VersionNumber)) return new VersionNumber(random.Next(1, 1000));
        if (type == typeof(FindingKey)) return new FindingKey(Id(), Id(), $"week/{Id()}");
        if (type == typeof(RuleParameter)) return new RuleParameter(Id(), Id());
        if (type == typeof(FactSet)) return Facts();
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ValueList<>)) return List(type);
        var birth = type.GetConstructors().MaxBy(constructor => constructor.GetParameters().Length)!;
        if (type.IsValueType && birth.GetParameters() is [{ ParameterType: var only }] && only == typeof(string)) return birth.Invoke([Id()]);
        return birth.Invoke([.. birth.GetParameters().Select(Argument)]);
    }

    public FactSet Facts()
    {
        var facts = FactSet.Empty;
        foreach (var facet in SeasonFacets.All.Concat(SetupFacets.All).Where(_ => random.Next(3) == 0))
            for (var i = random.Next(1, 4); i > 0; i--) facts = facts.With(Place(facet), Value(facet.ValueType));
        return facts;
    }

    private Key Place(Facet facet) => new(facet.Name, Value(facet.GetType().GetGenericArguments()[0]).ToString()!);

    private object? Argument(ParameterInfo parameter) =>
        nullability.Create(parameter).WriteState == NullabilityState.Nullable && random.Next(3) == 0 ? null : Value(parameter.ParameterType);

    private object List(Type type)
    {
        var item = type.GetGenericArguments()[0];
        var items = Array.CreateInstance(item, random.Next(4));
        for (var i = 0; i < items.Length; i++) items.SetValue(Value(item), i);
        return Activator.CreateInstance(type, items)!;
    }

    private DaySpan Span()
    {
        var first = (DateOnly)Value(typeof(DateOnly));
        return new DaySpan(first, DateOnly.FromDayNumber(Math.Min(DateOnly.MaxValue.DayNumber, first.DayNumber + random.Next(400))));
    }

    private string Id() => new(random.GetItems<char>("abcXYZ0189._-", random.Next(1, IdText.Longest + 1)));

    /// <summary>Letters that JSON, files and terminals stumble over.</summary>
    private string Text() => string.Concat(random.GetItems<string>(
        ["a", "Z", "ø", "ß", "й", "東", "🤾", "e\u0301", "\"", "\\", "/", "\n", "\t", "\r", "\u0000", "\u001b", "\u007f", "\u2028", "\ufeff", "'", "<", "&", ",", ";", " "], random.Next(30)));
}
