using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.HandOut;

/// <summary>Which matches are planned for is the staff's own affair: nothing that leaves shows it unless that was switched on.</summary>
public static class KeyMatches
{
    /// <summary>The season with every key match a regular one, so that whatever is made of it cannot tell them apart.</summary>
    public static Season WithoutKeyMatches(this Season season) => new(season.Id, season.AllMatches
        .Where(match => match.Importance == Importance.Key)
        .Aggregate(season.Facts, (facts, match) => facts.With(SeasonFacets.Match.Of(match.Id), match with { Importance = Importance.Regular })));
}
