using System.Collections.Immutable;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;
using Seasonwright.Desk.Streams;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Home;

namespace Seasonwright.Desk.Workouts;

/// <summary>Home programmes as they are written and handed out: with the version that says the same, else as a draft, for what binds on players always holds as of now.</summary>
public static class HandingHome
{
    /// <param name="person">For this player alone; null for all it is for.</param>
    /// <returns>Null where there is no such programme.</returns>
    public static async Task<SquadHome?> HomeAsync(this Workspace workspace, OpenSeason open, HomeProgrammeId id, PersonId? person = null, CancellationToken cancel = default)
    {
        var (season, setup) = (open.Season, open.Setup);
        if (season.HomeProgramme(id) is not { } programme) return null;
        var published = await open.PublishedAsync(cancel);
        var edition = published is not null && IsSame(programme, season, published.Season) ? new Edition(published.Publication, DateOnly.FromDateTime(published.Instant.LocalDateTime)) : Edition.Draft(workspace.Today);
        var players = (await workspace.RosterAsync(setup.Id)).Where(player => person is null || player.Id == person).Listed();
        var names = (await workspace.NamesAsync(cancel)).ToImmutableDictionary(name => new PersonId(name.Key), name => name.Value);
        return SquadHome.Of(new SharedSeason(season, setup, edition), programme, players, names);
    }

    /// <summary>Writes a programme, or says why not. One of whose workouts nothing can be done with what is there is none.</summary>
    /// <param name="basedOn">The log number of the state the person saw.</param>
    public static Task<Answer> WriteHomeAsync(this OpenSeason open, Actor actor, Guid gesture, HomeProgramme programme, long basedOn) =>
        NothingIn(programme, open.Season, open.Setup) is { } workout ? Task.FromResult<Answer>(new NotDone(Refusal.Say("home-nothing", "equipment", workout.Name)))
            : open.Stream.ApplyAsync(actor, new Gesture(gesture, basedOn, [new SetHomeProgramme(programme)]));

    /// <inheritdoc cref="RemoveHomeProgramme"/>
    public static Task<Answer> RemoveHomeAsync(this OpenSeason open, Actor actor, Guid gesture, HomeProgrammeId id) => open.Stream.ApplyAsync(actor, new Gesture(gesture, open.Stream.State.Number, [new RemoveHomeProgramme(id)]));

    /// <summary>A workout of it of which nothing is left with what is there; null where something is left of each.</summary>
    private static Workout? NothingIn(HomeProgramme programme, Season season, Setup setup)
    {
        var left = AthleteHome.LeftOut(programme, season, setup).Select(exercise => exercise.Id).ToHashSet();
        return programme.Days.Select(day => day.Workout is { } id ? season.Workout(id) : null).OfType<Workout>().FirstOrDefault(workout => workout.Items.All(item => left.Contains(item.Exercise) || setup.Exercise(item.Exercise) is null));
    }

    private static bool IsSame(HomeProgramme programme, Season season, Season published) => programme.Equals(published.HomeProgramme(programme.Id))
        && programme.Days.Select(day => day.Workout).OfType<WorkoutId>().All(id => Equals(season.Workout(id), published.Workout(id)));
}
