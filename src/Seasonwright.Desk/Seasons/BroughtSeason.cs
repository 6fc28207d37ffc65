using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Seasons;

/// <summary>A season made of what a coach has already.</summary>
public static class BroughtSeason
{
    /// <summary>
    /// Starts a season and puts everything brought into it as one gesture of its own, so that one undo leaves the bare weeks. Refused
    /// as a whole when any part is. Sent again, it gives the season that the first one made.
    /// </summary>
    /// <inheritdoc cref="SeasonBirth.CreateAsync"/>
    /// <param name="start">Lays the weeks.</param>
    /// <param name="brought">What comes into them.</param>
    public static async Task<(Answer Answer, SeasonId? Season)> BringAsync(
        this Workspace workspace, Actor actor, Guid gesture, TeamId? team, IReadOnlyList<SetupEdit> setup, StartSeason start, IReadOnlyList<SeasonEdit> brought)
    {
        var (rehearsed, reasons) = Rehearse(new(gesture.ToString()), start, brought);
        if (rehearsed is null) return (new NotDone(reasons), null);
        var (answer, season) = await workspace.CreateAsync(actor, gesture, team, setup, [start]);
        if (season is not { } made || brought.Count == 0 || await workspace.SeasonAsync(made) is not { } open) return (answer, season);
        // Of the gesture's own id, so that a page sent twice puts nothing in twice.
        var put = await open.Stream.ApplyAsync(actor, new Gesture(SeasonBirth.Beside(gesture, 2), open.Stream.State.Number, [.. brought]));
        return put is Kept ? (put, season) : (put, null);
    }

    /// <summary>What comes into being, or why it cannot; nothing is kept.</summary>
    /// <returns>The season; null with the reasons when an edit is refused.</returns>
    public static (Season? Season, ValueList<Refusal> Reasons) Rehearse(SeasonId id, StartSeason start, IEnumerable<SeasonEdit> brought)
    {
        var season = Season.Empty(id);
        foreach (var edit in brought.Prepend(start))
        {
            switch (Decider.Decide(season, edit))
            {
                case Refused refused:
                    return (null, refused.Reasons);
                case Accepted accepted:
                    season = season.With(accepted.Step);
                    break;
            }
        }
        return (season, ValueList<Refusal>.Empty);
    }
}
