using System.Collections.Immutable;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>Every family of places that a club's teams share. The names are part of the file format: add, never rename.</summary>
public static class ClubFacets
{
    public static readonly Facet<RoomId, Facility> Facility = new("facility");

    public static ImmutableArray<Facet> All { get; } = [Facility];
}
