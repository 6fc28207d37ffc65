using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Desk.Workouts;

/// <summary>Writing a workout field by field, as it is typed.</summary>
/// <param name="Edit">What makes it so; null where nothing is otherwise, or something is wrong.</param>
/// <param name="Wrong">What is wrong, and how to mend it.</param>
public sealed record WritingWorkouts(SetWorkout? Edit, string? Wrong)
{
    /// <summary>What an exercise begins with.</summary>
    private static readonly Prescription Usual = new(3, 8, WorkUnit.Repetitions, Effort.Reserve(2));

    /// <summary>Seconds of rest a new part begins with.</summary>
    private const int UsualRest = 120;

    /// <summary>In a cell: not done that week.</summary>
    private static readonly string[] NotDone = ["-", "–", "0"];

    private static WritingWorkouts Nothing { get; } = new(null, null);

    /// <summary>
    /// Takes what was typed into a field: "name", "quality", "progression/kind", "part/2/kind", "part/2/rest", "item/ID/exercise", "item/ID/does", "item/ID/note", "add/2" (an exercise at the
    /// end of a part), "add/new" (in a part of its own), "cell/WEEK/ITEM"; or a press: "up/ID", "down/ID", "remove/ID".
    /// </summary>
    /// <param name="field">Where; one that is not there any more changes nothing.</param>
    /// <param name="text">What was typed; nothing for a press.</param>
    /// <param name="newId">For an exercise that comes.</param>
    public static WritingWorkouts Write(Season season, Setup setup, Workout workout, string field, string text, Func<WorkoutItemId> newId)
    {
        var typed = text.Trim();
        return field.Split('/') switch
        {
            ["name"] => typed.Length > 0 ? Made(workout with { Name = typed }) : Trouble("text-missing", "name"),
            ["quality"] => Made(workout with { Quality = typed.Length > 0 && IdText.IsId(typed) ? new QualityId(typed) : null }),
            ["progression", var part] => OfProgression(part),
            ["part", var place, "kind"] when PartAt(place) is { } at && Enum.TryParse<PartKind>(typed, true, out var kind) => Made(WithPart(at, workout.Parts[at] with { Kind = kind })),
            ["part", var place, "rest"] when PartAt(place) is { } at => Whole(typed, 0, WorkoutPart.MostRest, "rest", rest => WithPart(at, workout.Parts[at] with { Rest = rest })),
            ["item", var id, "exercise"] => Named(typed, exercise => WithItem(id, item => item with { Exercise = exercise.Id })),
            ["item", var id, "does"] => Read(typed, prescription => WithItem(id, item => item with { Prescription = prescription })),
            ["item", var id, "note"] => Made(WithItem(id, item => item with { Note = typed.Length > 0 ? typed : null })),
            ["add", "new"] => Named(typed, exercise => workout with { Parts = [.. workout.Parts, new WorkoutPart(PartKind.Straight, [New(exercise)], UsualRest)] }),
            ["add", var place] when PartAt(place) is { } at => Named(typed, exercise => Added(at, New(exercise))),
            ["cell", var week, var id] => OfCell(week, id, typed),
            ["up", var id] => Made(Moved(id, -1)),
            ["down", var id] => Made(Moved(id, 1)),
            ["remove", var id] => Made(Without(id)),
            _ => Nothing,
        };

        WritingWorkouts Made(Workout now) => now.Equals(workout) ? Nothing : Decider.Decide(season, new SetWorkout(now)) is Refused refused ? new(null, refused.Reasons[0].Sentence) : new(new SetWorkout(now), null);

        static WritingWorkouts Trouble(string id, params object?[] numbers) => new(null, Refusal.Say(id, "workout", numbers).Sentence);

        int? PartAt(string place) => int.TryParse(place, NumberStyles.None, CultureInfo.InvariantCulture, out var at) && at < workout.Parts.Count ? at : null;

        WorkoutItem New(Exercise exercise) => new(newId(), exercise.Id, exercise.Pattern switch
        {
            MovementPattern.Run => new(4, 30, WorkUnit.Metres, Effort.Free),
            MovementPattern.Conditioning => new(4, 60, WorkUnit.Seconds, Effort.Free),
            MovementPattern.Jump or MovementPattern.Throw or MovementPattern.Mobility => new(3, 5, WorkUnit.Repetitions, Effort.Free),
            _ => Usual with { Effort = exercise.HasMax ? Usual.Effort : Effort.Free },
        });

        WritingWorkouts Named(string name, Func<Exercise, Workout> with) =>
            setup.Exercises.FirstOrDefault(exercise => string.Equals(exercise.Name, name, StringComparison.OrdinalIgnoreCase)) is { } exercise ? Made(with(exercise)) : Trouble("workout-exercise", name);

        WritingWorkouts Read(string what, Func<Prescription, Workout> with) => PrescriptionText.Read(what) is { } prescription ? Made(with(prescription)) : Trouble("workout-text", what);

        WritingWorkouts Whole(string number, int least, int most, string name, Func<int, Workout> with) =>
            int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var whole) && whole >= least && whole <= most ? Made(with(whole)) : Trouble("workout-number", number.Length > 0 ? number : name, least, most);

        WritingWorkouts OfProgression(string part)
        {
            var way = workout.Progression;
            return part switch
            {
                "kind" when Enum.TryParse<ProgressionKind>(typed, true, out var kind) => Made(workout with { Progression = way with { Kind = kind, Percent = way.Percent == 0 && kind != ProgressionKind.Same ? 2.5m : way.Percent } }),
                "percent" => decimal.TryParse(typed.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && percent <= Progression.MostPercent
                    ? Made(workout with { Progression = way with { Percent = percent } }) : Trouble("workout-number", typed, 0, Progression.MostPercent),
                "repetitions" => Whole(typed, 0, Progression.MostRepetitions, part, number => workout with { Progression = way with { Repetitions = number } }),
                "sets" => Whole(typed, 0, Progression.MostSets, part, number => workout with { Progression = way with { Sets = number } }),
                _ => Nothing,
            };
        }

        WritingWorkouts OfCell(string week, string id, string what)
        {
            if (!IdText.IsId(week) || !IdText.IsId(id) || season.Week(new(week)) is not { } there || workout.Items.FirstOrDefault(item => item.Id.Text == id) is not { } item) return Nothing;
            var others = (workout.Cells ?? []).Where(cell => cell.Week != there.Id || cell.Item != item.Id).ToList();
            if (what.Length == 0) return Made(Filled(others));
            if (NotDone.Contains(what, StringComparer.Ordinal)) return Made(Filled([.. others, new(there.Id, item.Id, null)]));
            // The tempo stays the exercise's where none is typed.
            return Read(what, prescription => Filled([.. others, new(there.Id, item.Id, prescription with { Tempo = prescription.Tempo ?? item.Prescription.Tempo })]));
        }

        Workout Filled(IReadOnlyCollection<WorkoutCell> cells) => workout with { Cells = cells.Count > 0 ? cells.OrderBy(cell => cell.Item.Text, StringComparer.Ordinal).ThenBy(cell => cell.Week.Text, StringComparer.Ordinal).ToValueList() : null };

        Workout WithPart(int at, WorkoutPart part) => workout with { Parts = [.. workout.Parts.Take(at), part, .. workout.Parts.Skip(at + 1)] };

        Workout Added(int at, WorkoutItem item) => WithPart(at, workout.Parts[at] with { Items = [.. workout.Parts[at].Items, item] });

        Workout WithItem(string id, Func<WorkoutItem, WorkoutItem> with) =>
            workout with { Parts = workout.Parts.Select(part => part with { Items = part.Items.Select(item => item.Id.Text == id ? with(item) : item).ToValueList() }).ToValueList() };

        Workout Without(string id)
        {
            var parts = workout.Parts.Select(part => part with { Items = part.Items.Where(item => item.Id.Text != id).ToValueList() }).Where(part => part.Items.Count > 0).ToValueList();
            return (workout with { Parts = parts }) is var less ? less with { Cells = workout.Cells?.Where(cell => cell.Item.Text != id).ToValueList() is { Count: > 0 } cells ? cells : null } : less;
        }

        // Over the edge of its part it goes into the next one.
        Workout Moved(string id, int by)
        {
            if (workout.Parts.Select((part, at) => (part, at)).FirstOrDefault(one => one.part.Items.Any(item => item.Id.Text == id)) is not ({ } home, var place)) return workout;
            var items = home.Items.ToList();
            var (old, now) = (items.FindIndex(item => item.Id.Text == id), items.FindIndex(item => item.Id.Text == id) + by);
            var moved = items[old];
            if (now >= 0 && now < items.Count)
            {
                items.RemoveAt(old);
                items.Insert(now, moved);
                return WithPart(place, home with { Items = items.ToValueList() });
            }
            if (place + by < 0 || place + by >= workout.Parts.Count) return workout;
            var into = workout.Parts[place + by];
            var parts = workout.Parts.ToList();
            parts[place] = home with { Items = home.Items.Where(item => item.Id.Text != id).ToValueList() };
            parts[place + by] = into with { Items = by > 0 ? [moved, .. into.Items] : [.. into.Items, moved] };
            return workout with { Parts = parts.Where(part => part.Items.Count > 0).ToValueList() };
        }
    }
}
