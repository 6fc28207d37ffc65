using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Takes an exercise of the team's own away. One of the book is again as the book has it; one that nobody has any more is named by no other.</summary>
public sealed record RemoveExercise(ExerciseId Exercise) : SetupEdit
{
    public override string Describe(Setup setup) => ExerciseBook.Find(Exercise) is { } book
        ? Sentences.Say("did.restore-exercise", book.Name)
        : Sentences.Say("did.remove-exercise", setup.Exercise(Exercise)?.Name);

    internal override void Decide(Draft draft)
    {
        if (draft.Find(SetupFacets.Exercise, Exercise) is null) draft.Refuse("exercise-not-own", SetExercise.SubjectOf(Exercise), Exercise);
        draft.Remove(SetupFacets.Exercise, Exercise);
        if (ExerciseBook.Find(Exercise) is not null) return;
        foreach (var other in draft.Facts.All(SetupFacets.Exercise).Select(own => own.Value).ToList())
            if (Without(other) is var rest && rest != other) draft.Set(SetupFacets.Exercise, other.Id, rest);
    }

    private Exercise Without(Exercise other) => other with
    {
        Easier = other.Easier == Exercise ? null : other.Easier,
        Harder = other.Harder == Exercise ? null : other.Harder,
        MaxOf = other.MaxOf == Exercise ? null : other.MaxOf,
        MaxShare = other.MaxOf == Exercise ? null : other.MaxShare,
    };
}
