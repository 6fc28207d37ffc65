using System.Collections.Frozen;
using System.Text.Json;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Wire;

/// <summary>Looks families of places up by the name they have on the wire.</summary>
internal static class FacetBook
{
    private static readonly FrozenDictionary<string, Facet> ByName =
        SeasonFacets.All.Concat(SetupFacets.All).Concat(ClubFacets.All).ToFrozenDictionary(facet => facet.Name, StringComparer.Ordinal);

    public static Facet Find(string name) => ByName.GetValueOrDefault(name) ?? throw new JsonException(Sentences.Say("place.family", name));

    /// <exception cref="JsonException">The family is unknown or the subject is not one of its own.</exception>
    public static Facet Find(Key key)
    {
        var facet = Find(key.Facet);
        return facet.IsSubject(key.Subject) ? facet : throw new JsonException(Sentences.Say("place.subject", key, key.Subject, facet));
    }
}
