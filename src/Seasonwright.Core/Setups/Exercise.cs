using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>An exercise in plain trade names.</summary>
/// <param name="Muscles">Those that work most, the first one most.</param>
/// <param name="Equipment">All that is needed; none for what needs nothing.</param>
/// <param name="Demands">What rules it out for somebody who must do without.</param>
/// <param name="IsOneSided">Repetitions are counted for each side.</param>
/// <param name="Contacts">Ground contacts of a repetition, 0 to 20: each landing is one, on one foot or on both. Steps of a run are none.</param>
/// <param name="Easier">What to do where it is too much.</param>
/// <param name="Harder">What to do where it is too little.</param>
/// <param name="MaxOf">The exercise whose maximum tells of this one's; null where only its own does.</param>
/// <param name="MaxShare">Of that maximum, 10 to 150 %. Common practice, no source: a first guess until the exercise has a maximum of its own.</param>
public sealed record Exercise(
    ExerciseId Id,
    string Name,
    MovementPattern Pattern,
    LoadedBy Load,
    ValueList<Muscle> Muscles,
    ValueList<Equipment> Equipment,
    ValueList<Demand> Demands,
    bool IsOneSided = false,
    int Contacts = 0,
    ExerciseId? Easier = null,
    ExerciseId? Harder = null,
    ExerciseId? MaxOf = null,
    Percent? MaxShare = null)
{
    public const int MostContacts = 20, LeastShare = 10, MostShare = 150;

    /// <summary>Whether a maximum and per cents of it mean anything.</summary>
    public bool HasMax => Load is LoadedBy.Bar or LoadedBy.TwoDumbbells or LoadedBy.OneDumbbell or LoadedBy.Kettlebell or LoadedBy.Stack or LoadedBy.OnTheBody;
}
