using Seasonwright.Core.Facts;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>
/// Whether facts that no edit made, a file's for instance, are such as edits could have made: each place known and of its kind,
/// each value within its bounds, each thing at its own id.
/// </summary>
public static class Sound
{
    /// <summary>What is wrong with a season's facts; empty when nothing is.</summary>
    public static ValueList<Refusal> Season(FactSet facts)
    {
        var draft = new Draft(FactSet.Empty);
        CheckSeason(draft, facts);
        return draft.Refusals;
    }

    /// <summary>What is wrong with a setup's facts; empty when nothing is.</summary>
    public static ValueList<Refusal> Setup(FactSet facts)
    {
        var draft = new Draft(FactSet.Empty);
        foreach (var key in facts.Keys) CheckPlace(draft, SetupFacets.All, key, facts[key]!);
        return draft.Refusals;
    }

    /// <summary>What is wrong with a club's facts; empty when nothing is.</summary>
    public static ValueList<Refusal> Club(FactSet facts)
    {
        var draft = new Draft(FactSet.Empty);
        foreach (var key in facts.Keys) CheckPlace(draft, ClubFacets.All, key, facts[key]!);
        return draft.Refusals;
    }

    internal static void CheckSeason(Draft draft, FactSet facts)
    {
        if (facts[SeasonFacets.Frame.Of(default)] is null) draft.Refuse("weeks-count", "weeks", 0, Frame.MostWeeks);
        foreach (var key in facts.Keys) CheckPlace(draft, SeasonFacets.All, key, facts[key]!);
    }

    private static void CheckPlace(Draft draft, IEnumerable<Facet> facets, Key key, object value)
    {
        var facet = facets.FirstOrDefault(facet => facet.Name == key.Facet);
        if (facet is null || !facet.ValueType.IsInstanceOfType(value) || !facet.IsSubject(key.Subject) || IdOf(value) is { } id && id != key.Subject)
            draft.Refuse("place-wrong", key.ToString(), key);
        else CheckValue(draft, key, value);
    }

    private static string? IdOf(object value) => value switch
    {
        Match match => match.Id.Text,
        Event item => item.Id.Text,
        TestDay test => test.Id.Text,
        Session session => session.Id.Text,
        Workout workout => workout.Id.Text,
        HomeProgramme home => home.Id.Text,
        Note note => note.Id.Text,
        Goal goal => goal.Id.Text,
        Track track => track.Id.Text,
        GroupLine group => group.Id.Text,
        Quality quality => quality.Id.Text,
        TypicalWeek week => week.Id.Text,
        Exercise exercise => exercise.Id.Text,
        Facility facility => facility.Room.Id.Text,
        Publication publication => new VersionNumber(publication.Number).ToString(),
        _ => null,
    };

    private static void CheckValue(Draft draft, Key key, object value)
    {
        switch (value)
        {
            case Frame frame: SeasonDraft.CheckFrame(draft, frame); break;
            case TeamCard team: NameTeam.Check(draft, team); break;
            case Match match: SetMatch.Check(draft, match); break;
            case Event item: SetEvent.Check(draft, item); break;
            case TestDay test: SetTestDay.Check(draft, test); break;
            case Session session: SetSession.Check(draft, session); break;
            case Workout workout: SetWorkout.Check(draft, workout); break;
            case HomeProgramme home: SetHomeProgramme.Check(draft, home); break;
            case Note note: SetNote.Check(draft, note); break;
            case Goal goal: SetGoal.Check(draft, goal); break;
            case Brief brief: SetBrief.Check(draft, brief); break;
            case Track track: SetTrack.Check(draft, track); break;
            case GroupLine group: SetGroup.Check(draft, group); break;
            case Phase phase: draft.Limit(phase.Name, $"{key}.name", SeasonDraft.LongestName); break;
            case Block block: draft.Limit(block.Name, $"{key}.name", SeasonDraft.LongestName); break;
            case Publication publication: draft.Limit(publication.Name, $"{key}.name", SeasonDraft.LongestName); break;
            case Practices practices: SetPractices.CheckCount(draft, practices.Count, key.ToString()); break;
            case Quality quality: draft.Require(quality.Name, $"{key}.name", SeasonDraft.LongestName); break;
            case UsualWeek week: SetUsualWeek.Check(draft, week); break;
            case TypicalWeek week: SetTypicalWeek.Check(draft, week); break;
            case Exercise exercise: SetExercise.Check(draft, exercise); break;
            case Lift lift: SetLift.Check(draft, lift, key.ToString()); break;
            case Gym gym: SetGym.Check(draft, gym); break;
            case Facility facility: SetFacility.Check(draft, facility); break;
            case LocaleSettings locale: SetLocale.Check(draft, locale); break;
            case Acceptance acceptance: AcceptFinding.Check(draft, acceptance); break;
            case string text: draft.Require(text, key.ToString(), SeasonDraft.LongestText); break;
        }
        if (key.Facet == SeasonFacets.TrackCell.Name) draft.RequirePossible(Pair<TrackId, CellPlace>.Parse(key.Subject).Second.Day, key.ToString());
    }
}
