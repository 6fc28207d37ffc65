using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Cli;

/// <summary>Makes edits on a season in memory.</summary>
internal static class Edits
{
    /// <param name="before">What to say before the reasons of a refusal, for instance which line it is.</param>
    /// <returns>What was done, in words; null after saying why it was refused.</returns>
    public static string? Do(ref Season season, ref Setup setup, Edit edit, Terminal terminal, string before = "")
    {
        switch (edit switch
        {
            SeasonEdit mine => RuledDecider.Decide(season, setup, mine),
            SetupEdit mine => RuledDecider.Decide(setup, mine),
            // A file holds one season and its team; what a club's teams share is in the workspace.
            _ => new Refused([Refusal.Say("edit-elsewhere", "edit")]),
        })
        {
            case Accepted accepted:
                var words = edit is SeasonEdit ofSeason ? RuledHistory.Describe(season, setup, ofSeason) : RuledHistory.Describe(setup, (SetupEdit)edit);
                if (edit is SeasonEdit) season = season.With(accepted.Step);
                else setup = setup.With(accepted.Step);
                return words;
            case Refused refused:
                foreach (var reason in refused.Reasons) terminal.Error.WriteLine(before + reason.Sentence);
                terminal.Complain("nothing-written");
                return null;
            default:
                throw new InvalidOperationException("A decision is accepted or refused.");
        }
    }

    /// <returns>False after saying which was refused and why.</returns>
    public static bool DoAll(ref Season season, ref Setup setup, IEnumerable<Edit> edits, Terminal terminal)
    {
        foreach (var edit in edits)
            if (Do(ref season, ref setup, edit, terminal) is null) return false;
        return true;
    }
}
