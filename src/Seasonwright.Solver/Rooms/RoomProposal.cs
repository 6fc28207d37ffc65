using Seasonwright.Core;
using Seasonwright.Core.Rooms;

namespace Seasonwright.Solver;

/// <summary>A room's week with a place for as many sessions as can be.</summary>
/// <param name="Week">As it was asked for, each session with its place or without one.</param>
/// <param name="Unplaced">Those without, each with what keeps it out.</param>
/// <param name="Moved">Those that are not where they were wished, each with what keeps it from there.</param>
/// <param name="Binding">Half hours that would have to hold more: where nothing but the room keeps a session out.</param>
/// <param name="Fewest">No layout leaves fewer without a place.</param>
/// <param name="IsFewest">None leaves fewer, or treats teams more alike; else the search ended at its limit of work.</param>
/// <param name="Cost">Half hours from the wishes, as docs/planning-choices.md counts them.</param>
/// <param name="Bound">No layout with as many places, as alike for the teams, costs less.</param>
/// <param name="IsProven">None costs less; else the search ended at its limit of work.</param>
public sealed record RoomProposal(
    RoomWeek Week,
    ValueList<RoomReasons> Unplaced,
    ValueList<RoomReasons> Moved,
    ValueList<string> Binding,
    int Fewest,
    bool IsFewest,
    long Cost,
    long Bound,
    bool IsProven);
