namespace Seasonwright.Core.Facts;

/// <summary>A family of places that hold the same kind of value: "match", "week.load". Its name is part of the file format and never changes.</summary>
public abstract class Facet
{
    private protected Facet(string name, Type valueType)
    {
        Name = name;
        ValueType = valueType;
    }

    public string Name { get; }

    public Type ValueType { get; }

    /// <summary>Whether the text is a well-formed subject of this family.</summary>
    public abstract bool IsSubject(string text);

    public override string ToString() => Name;
}

/// <summary>A family of places by subject.</summary>
public sealed class Facet<TSubject, TValue>(string name) : Facet(name, typeof(TValue))
    where TSubject : ISubject<TSubject>
    where TValue : notnull
{
    public Key Of(TSubject subject) => new(Name, subject.ToString()!);

    public override bool IsSubject(string text)
    {
        try
        {
            return TSubject.Parse(text).ToString() == text;
        }
        catch (FormatException)
        {
            return false;
        }
    }
}
