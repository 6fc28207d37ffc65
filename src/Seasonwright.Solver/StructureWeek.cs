using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>A week of a structure.</summary>
/// <param name="Phase">Peak from the first week of the last taper to the last key match of its cluster: a label of competition weeks.</param>
/// <param name="Variant">Which of its sort the kind is.</param>
/// <param name="Block">Counted from 0: a run of loading weeks of one phase and the week that ends it.</param>
/// <param name="Points">The whole week's load.</param>
/// <param name="Range">Points that a week of its kind may hold.</param>
/// <param name="Guide">The load a coach would expect, in tenths of a point.</param>
/// <param name="Bounds">What bounds the load, in order.</param>
public sealed record StructureWeek(int Index, PhaseKind Phase, WeekKind Kind, Variant Variant, int Block, int Points, Limits.Range Range, int Guide, ValueList<Bound> Bounds);

/// <summary>One condition's bounds of a week's load, in tenths of a point, both ends inside.</summary>
/// <param name="Least">0 for none.</param>
/// <param name="Most"><see cref="int.MaxValue"/> for none.</param>
/// <param name="IsForced">The condition asks for more or less than a week of this kind can hold with its matches and entered practices, or than the coach settled in this week and the one before: it is met as far as they allow.</param>
public readonly record struct Bound(Condition Condition, int Least, int Most, bool IsForced = false)
{
    /// <summary>Whether a load could not rise or fall by a point without leaving it.</summary>
    public bool Binds(int points) => 10 * points + 10 > Most || 10 * points - 10 < Least && Least > 0;
}

/// <summary>A condition that a plan goes against in a week.</summary>
/// <param name="Beyond">Tenths of a point for a load, of a week for the rest.</param>
/// <param name="IsForced">No plan of its stage keeps the condition, whatever else it gives up: proven, not guessed.</param>
public sealed record Breach(Condition Condition, int Week, int Beyond, bool IsForced = false);
