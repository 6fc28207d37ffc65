using System.Collections.Immutable;
using Seasonwright.Core.Facts;

namespace Seasonwright.Core.Edits;

/// <summary>The desk an edit is decided on: it reads and writes places, and both are noted. Lives only while deciding.</summary>
internal class Draft
{
    private readonly FactSet before;
    private readonly HashSet<Key> reads = [];
    private readonly List<Refusal> refusals = [];

    public Draft(FactSet facts) => before = Facts = facts;

    public FactSet Facts { get; private set; }

    public bool IsRefused => refusals.Count > 0;

    public ValueList<Refusal> Refusals => refusals.ToValueList();

    /// <summary>What a place holds; the edit relies on it.</summary>
    public TValue? Find<TSubject, TValue>(Facet<TSubject, TValue> facet, TSubject subject)
        where TSubject : ISubject<TSubject>
        where TValue : class
    {
        reads.Add(facet.Of(subject));
        return Facts.Find(facet, subject);
    }

    /// <inheritdoc cref="Find"/>
    public TValue? FindValue<TSubject, TValue>(Facet<TSubject, TValue> facet, TSubject subject)
        where TSubject : ISubject<TSubject>
        where TValue : struct
    {
        reads.Add(facet.Of(subject));
        return Facts.FindValue(facet, subject);
    }

    public void Set<TSubject, TValue>(Facet<TSubject, TValue> facet, TSubject subject, TValue value)
        where TSubject : ISubject<TSubject>
        where TValue : notnull => Facts = Facts.With(facet.Of(subject), value);

    public void Remove<TSubject, TValue>(Facet<TSubject, TValue> facet, TSubject subject)
        where TSubject : ISubject<TSubject>
        where TValue : notnull => Facts = Facts.With(facet.Of(subject), null);

    /// <summary>Writes the value, or empties the place where it is the state of rest (null, false, "nothing").</summary>
    public void SetOrRemove<TSubject, TValue>(Facet<TSubject, TValue> facet, TSubject subject, TValue? value)
        where TSubject : ISubject<TSubject>
        where TValue : struct
    {
        if (value is { } some && !some.Equals(default(TValue))) Set(facet, subject, some);
        else Remove(facet, subject);
    }

    /// <summary>Takes over every fact of another set.</summary>
    public void Adopt(FactSet facts) => Facts = facts.Keys.Aggregate(Facts, (now, key) => now.With(key, facts[key]));

    public void Refuse(string id, string subject, params object?[] numbers) => refusals.Add(Refusal.Say(id, subject, numbers));

    /// <summary>Refuses a text that is missing or too long.</summary>
    public void Require(string? text, string field, int longest)
    {
        if (string.IsNullOrWhiteSpace(text)) Refuse("text-missing", field, field);
        else Limit(text, field, longest);
    }

    /// <summary>Refuses a text that is too long; none is fine.</summary>
    public void Limit(string? text, string field, int longest)
    {
        if (text?.Length > longest) Refuse("text-long", field, field, text.Length, longest);
        if (text is not null && !IsPlain(text)) Refuse("text-control", field, field);
    }

    /// <summary>No control characters but line feed and tab, and no half of a surrogate pair, which no file could keep.</summary>
    private static bool IsPlain(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsControl(text[i]) && text[i] is not ('\n' or '\t')) return false;
            if (!char.IsSurrogate(text[i])) continue;
            if (!char.IsSurrogatePair(text, i)) return false;
            i++;
        }
        return true;
    }

    public void RequirePossible(DateOnly? day, string field)
    {
        if (day is { } some && !Seasons.Frame.PossibleDays.Contains(some)) Refuse("day-impossible", field, field, some);
    }

    public Decision Result()
    {
        if (IsRefused) return new Refused(Refusals);
        var step = Step.Between(before, Facts);
        return new Accepted(step, [.. reads.Except(step.Changes.Select(change => change.Key))]);
    }
}
