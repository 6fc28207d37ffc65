using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Where an edit becomes a step or a refusal. Pure: the same state and edit give the same answer.</summary>
public static class Decider
{
    public static Decision Decide(Season season, SeasonEdit edit)
    {
        var draft = new SeasonDraft(season);
        if (!season.IsStarted && edit is not (StartSeason or AdoptSeason)) draft.Refuse("season-not-started", "frame");
        else edit.Decide(draft);
        return draft.Result();
    }

    /// <summary>The season after edits that were made for it.</summary>
    /// <exception cref="InvalidOperationException">One is refused: a fault of whoever made it.</exception>
    public static Season After(Season season, IEnumerable<SeasonEdit> edits) => edits.Aggregate(season, (now, edit) => Decide(now, edit) switch
    {
        Accepted accepted => now.With(accepted.Step),
        var refused => throw new InvalidOperationException($"{edit} is refused: {refused}"),
    });

    public static Decision Decide(Club club, ClubEdit edit)
    {
        var draft = new Draft(club.Facts);
        edit.Decide(draft);
        return draft.Result();
    }

    public static Decision Decide(Setup setup, SetupEdit edit)
    {
        var draft = new Draft(setup.Facts);
        edit.Decide(draft);
        return draft.Result();
    }
}
