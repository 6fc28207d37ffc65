using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>A laid-out week as edits of the season: only where it stands otherwise. Practices, locked, cancelled and past sessions are left alone.</summary>
public static class WeekEdits
{
    /// <param name="id">The id of something new, by its kind ("session") and by what makes it one of its kind; the same for the same.</param>
    public static ValueList<SeasonEdit> Of(Season season, Setup setup, WeekProposal proposal, Func<string, string, string> id)
    {
        if (proposal.Problem.Stop is not null) return [];
        var known = season.AllSessions.Select(session => session.Id.Text).ToHashSet(StringComparer.Ordinal);
        var standing = proposal.Problem.Standing.Select(session => season.Session(session.Id!.Value)!).ToList();
        List<SeasonEdit> edits = [];
        foreach (var session in proposal.Sessions)
        {
            var (day, doses) = (proposal.Problem.Days[session.Day].Date, WeekDoses.Of(proposal.Problem, session, setup));
            // What stands for the same on its day stays the same thing, with its name, time and place.
            var stands = standing.Find(one => one.Day == day && one.Kind == session.Kind);
            if (stands is not null) standing.Remove(stands);
            var made = (stands ?? new Session(new(New("session", string.Create(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd} {session.Kind}"))), day, session.Slot, session.Kind, default, default)) with
            {
                Slot = session.Slot,
                Minutes = new Minutes(session.Minutes),
                Rpe = new Rpe(session.Rpe),
                Start = stands?.Slot == session.Slot ? stands.Start : null,
                // A length that stays keeps its dose in the coach's figures.
                Doses = stands is not null && stands.Minutes.Value == session.Minutes && IsSame(WeekSession.Of(stands, setup, proposal.Problem.Days[0].Date), session) ? stands.Doses : doses.Count > 0 ? doses : null,
            };
            if (made != stands) edits.Add(new SetSession(made));
        }
        // First what goes, so that no day is too full.
        return [.. standing.Select(session => new RemoveSession(session.Id)), .. edits];

        static bool IsSame(WeekSession one, WeekSession other) => one.Qualities.Order().SequenceEqual(other.Qualities.Order());

        string New(string kind, string key)
        {
            var made = id(kind, key);
            for (var again = 2; !known.Add(made); again++) made = id(kind, string.Create(CultureInfo.InvariantCulture, $"{key} {again}"));
            return made;
        }
    }
}
