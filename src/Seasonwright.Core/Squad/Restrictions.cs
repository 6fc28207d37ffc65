using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Squad;

/// <summary>What holds for somebody who trains modified, each tag once and in the order of the list, so that equal restrictions are equal values.</summary>
public sealed record Restrictions
{
    /// <param name="tags">In any order, repeated or not.</param>
    /// <param name="mostMinutes">Most minutes of training a day, 1 and more; null for no cap.</param>
    /// <exception cref="ArgumentOutOfRangeException">A cap of 0 minutes (that is "out"), or a tag that is not in the list.</exception>
    public Restrictions(IEnumerable<RestrictionTag> tags, Minutes? mostMinutes = null)
    {
        if (mostMinutes is { Value: 0 }) throw new ArgumentOutOfRangeException(nameof(mostMinutes), "A cap of 0 minutes is \"out\".");
        Tags = tags.Distinct().Order().ToValueList();
        if (Tags.Any(tag => !Enum.IsDefined(tag))) throw new ArgumentOutOfRangeException(nameof(tags), "A restriction that is not in the list.");
        MostMinutes = mostMinutes;
    }

    public static Restrictions None { get; } = new([]);

    public ValueList<RestrictionTag> Tags { get; }

    public Minutes? MostMinutes { get; }

    public bool IsNone => Tags.Count == 0 && MostMinutes is null;

    /// <summary>Upper body only and lower body only at once: nothing is left to train.</summary>
    public bool LeavesNothing => Tags.Contains(RestrictionTag.UpperBodyOnly) && Tags.Contains(RestrictionTag.LowerBodyOnly);

    /// <summary>Both hold: every tag of either, the lower cap.</summary>
    public Restrictions And(Restrictions other) => new(Tags.Concat(other.Tags),
        MostMinutes is { } mine && other.MostMinutes is { } theirs ? mine.Value <= theirs.Value ? mine : theirs : MostMinutes ?? other.MostMinutes);
}
