using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Writes a workout, or changes it.</summary>
public sealed record SetWorkout(Workout Workout) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => season.Workout(Workout.Id) is null
        ? Sentences.Say("did.add-workout", Workout.Name)
        : Sentences.Say("did.change-workout", Workout.Name);

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, Workout);
        draft.Set(SeasonFacets.Workout, Workout.Id, Workout);
    }

    internal static void Check(Draft draft, Workout workout)
    {
        var subject = $"workout/{workout.Id}";
        draft.Require(workout.Name, $"{subject}.name", SeasonDraft.LongestName);
        var items = workout.Items.Select(item => item.Id).ToHashSet();
        Within(workout.Parts.Count, 0, Workout.MostParts, "parts");
        Within(items.Count, 0, Workout.MostItems, "parts.items");
        if (items.Count != workout.Items.Count()) draft.Refuse("workout-twice", $"{subject}.parts");
        Within(workout.Progression.Percent, 0, Progression.MostPercent, "progression.percent");
        Within(workout.Progression.Repetitions, 0, Progression.MostRepetitions, "progression.repetitions");
        Within(workout.Progression.Sets, 0, Progression.MostSets, "progression.sets");
        foreach (var part in workout.Parts)
        {
            Within(part.Rest, 0, WorkoutPart.MostRest, "parts.rest");
            Within(part.Items.Count, 1, WorkoutPart.MostItems, "parts.items");
            foreach (var item in part.Items)
            {
                draft.Limit(item.Note, $"{subject}.parts.note", SeasonDraft.LongestName);
                Prescribed(item.Prescription);
            }
        }
        var cells = workout.Cells ?? [];
        Within(cells.Count, 0, Workout.MostCells, "cells");
        if (cells.Select(cell => (cell.Week, cell.Item)).Distinct().Count() != cells.Count || cells.Any(cell => !items.Contains(cell.Item))) draft.Refuse("workout-cell", $"{subject}.cells");
        foreach (var cell in cells)
            if (cell.Prescription is { } prescription) Prescribed(prescription);

        void Prescribed(Prescription prescription)
        {
            Within(prescription.Sets, 1, Prescription.MostSets, "sets");
            Within(prescription.Amount, 1, Prescription.MostOf(prescription.Unit), "amount");
            var effort = prescription.Effort;
            if (Effort.BoundsOf(effort.Kind) is { } bounds) Within(effort.Amount ?? 0, bounds.Least, bounds.Most, "effort.amount");
            var isWhole = (effort.Amount is null) == (Effort.BoundsOf(effort.Kind) is null) && (effort.Weight is null) == (effort.Kind != EffortKind.Fixed) && (effort.StopLoss is null || effort.Kind == EffortKind.Velocity);
            if (!isWhole) draft.Refuse("workout-effort", $"{subject}.effort", Sentences.Say($"effort.{effort.Kind}"));
            Within(effort.StopLoss?.Value, Effort.LeastStopLoss, Effort.MostStopLoss, "effort.stopLoss");
        }

        void Within(decimal? number, decimal least, decimal most, string field)
        {
            if (number < least || number > most) draft.Refuse("workout-number", $"{subject}.{field}", number, least, most);
        }
    }
}
