using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Adds an exercise of the team's own, changes one, or puts the team's own way in the place of one of the book.</summary>
public sealed record SetExercise(Exercise Exercise) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-exercise", Exercise.Name);

    internal override void Decide(Draft draft)
    {
        var subject = SubjectOf(Exercise.Id);
        Check(draft, Exercise);
        RequireKnown(Exercise.Easier, $"{subject}.easier");
        RequireKnown(Exercise.Harder, $"{subject}.harder");
        RequireKnown(Exercise.MaxOf, $"{subject}.maxOf");
        if (Exercise.MaxOf is { } of && Find(draft, of) is { } known && (!known.HasMax || known.MaxOf is not null)) draft.Refuse("exercise-guess", $"{subject}.maxOf", known.Name);
        draft.Set(SetupFacets.Exercise, Exercise.Id, Exercise);

        void RequireKnown(ExerciseId? id, string field)
        {
            if (id is { } other && other != Exercise.Id && Find(draft, other) is null) draft.Refuse("exercise-unknown", field, other);
        }
    }

    internal static string SubjectOf(ExerciseId id) => $"exercise/{id}";

    /// <summary>What an exercise must be by itself, whatever others there are.</summary>
    internal static void Check(Draft draft, Exercise exercise)
    {
        var subject = SubjectOf(exercise.Id);
        draft.Require(exercise.Name, $"{subject}.name", SeasonDraft.LongestName);
        if (exercise.Muscles.Count == 0) draft.Refuse("exercise-muscles", $"{subject}.muscles");
        if (Repeats(exercise.Muscles) || Repeats(exercise.Equipment) || Repeats(exercise.Demands)) draft.Refuse("exercise-twice", subject);
        if (exercise.Contacts is < 0 or > Exercise.MostContacts) draft.Refuse("exercise-contacts", $"{subject}.contacts", Exercise.MostContacts);
        if (new[] { exercise.Easier, exercise.Harder, exercise.MaxOf }.Contains(exercise.Id)) draft.Refuse("exercise-itself", subject);
        if (exercise.MaxOf is null != exercise.MaxShare is null || exercise.MaxShare is { Value: < Exercise.LeastShare or > Exercise.MostShare } || exercise.MaxOf is not null && !exercise.HasMax)
            draft.Refuse("exercise-share", $"{subject}.maxShare", Exercise.LeastShare, Exercise.MostShare);
    }

    private static Exercise? Find(Draft draft, ExerciseId id) => draft.Find(SetupFacets.Exercise, id) ?? ExerciseBook.Find(id);

    private static bool Repeats<T>(ValueList<T> list) => list.Distinct().Count() != list.Count;
}
