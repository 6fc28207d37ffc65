namespace Seasonwright.Core.Facts;

/// <summary>The subject of a family that has only one place.</summary>
public readonly record struct Only : ISubject<Only>
{
    public static Only Parse(string text) => text.Length == 0 ? default : throw new FormatException($"'{text}' stands where nothing may.");

    public override string ToString() => "";
}

/// <summary>Two subjects together, written "first:second".</summary>
public readonly record struct Pair<TFirst, TSecond>(TFirst First, TSecond Second) : ISubject<Pair<TFirst, TSecond>>
    where TFirst : ISubject<TFirst>
    where TSecond : ISubject<TSecond>
{
    public static Pair<TFirst, TSecond> Parse(string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0) throw new FormatException($"'{text}' is no pair: a colon is missing.");
        return new(TFirst.Parse(text[..colon]), TSecond.Parse(text[(colon + 1)..]));
    }

    public override string ToString() => $"{First}:{Second}";
}
