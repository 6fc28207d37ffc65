using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Removes a workout. Sessions in which it is done stay, with nothing written down for them; one that is done at home cannot go: its days would be free without anybody saying so.</summary>
public sealed record RemoveWorkout(WorkoutId Workout) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.remove-workout", season.Workout(Workout)?.Name ?? Workout.Text);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Workout, Workout) is null) draft.Refuse("workout-unknown", $"workout/{Workout}", Workout);
        foreach (var home in draft.Before.HomeProgrammes.Where(home => home.Days.Any(day => day.Workout == Workout))) draft.Refuse("workout-at-home", $"home/{home.Id}", home.Name);
        draft.Remove(SeasonFacets.Workout, Workout);
        foreach (var session in draft.Before.AllSessions.Where(session => session.Workout == Workout)) draft.Set(SeasonFacets.Session, session.Id, session with { Workout = null });
    }
}
