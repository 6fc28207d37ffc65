namespace Seasonwright.Core.Facts;

/// <summary>
/// What an edit did, place by place. A step is all that replay needs: applying it never asks a rule, so tightening a rule later
/// never makes an old log refuse to open.
/// </summary>
public sealed record Step(ValueList<Change> Changes)
{
    public static Step Nothing { get; } = new(ValueList<Change>.Empty);

    public bool IsNothing => Changes.Count == 0;

    /// <summary>The step that takes this one back.</summary>
    public Step Inverse => new(Changes.Reverse().Select(change => change.Inverse).ToValueList());

    // As with a change, the compiler's would never end.
    public override string ToString() => Changes.ToString();

    /// <summary>Both steps as one: places that end as they began drop out.</summary>
    public Step Then(Step next)
    {
        var merged = new SortedDictionary<Key, Change>();
        foreach (var change in Changes.Concat(next.Changes))
            merged[change.Key] = merged.TryGetValue(change.Key, out var earlier) ? earlier with { After = change.After } : change;
        return new Step(merged.Values.Where(change => !Equals(change.Before, change.After)).ToValueList());
    }

    /// <summary>The step from one set of facts to another, in key order.</summary>
    public static Step Between(FactSet before, FactSet after) => new(before.ChangesTo(after).ToValueList());
}
