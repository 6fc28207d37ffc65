using Seasonwright.Core.Loads;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents;
using Seasonwright.Documents.Year;
using Seasonwright.Solver;

namespace Seasonwright.Web.Propose;

/// <summary>A week of the plan beside the same week of a proposal.</summary>
/// <param name="Differs">Whether taking it would change anything.</param>
internal sealed record ComparedWeek(SeasonWeek Week, string Matches, string Now, string Then, string Developed, string Tests, bool Differs, IReadOnlyList<WeekReason> Why)
{
    public static IReadOnlyList<ComparedWeek> Of(Season now, Season then, Setup setup, Proposal proposal)
    {
        var tests = then.TestDays.Where(test => now.TestDays.All(old => old.Id != test.Id)).Select(test => test.Day).ToList();
        return
        [
            .. then.Weeks.Select(week => new ComparedWeek(
                week,
                string.Join(", ", then.MatchesIn(week).Where(match => !match.IsOff).Select(match => MatchText(match, setup))),
                Words(now, now.Week(week.Id)!, setup),
                Words(then, week, setup),
                string.Join(", ", setup.Qualities.Where(quality => then.EmphasisOf(week.Id, quality.Id) >= Emphasis.Develop).Select(quality => then.EmphasisOf(week.Id, quality.Id) == Emphasis.Focus ? Web.Words.Say("propose.focus", quality.Name) : quality.Name)),
                string.Join(", ", then.TestDays.Where(test => week.Days.Contains(test.Day)).Select(test => test.Day.Short(setup.Locale))),
                !Looks(now, now.Week(week.Id)!, setup).SequenceEqual(Looks(then, week, setup)) || tests.Exists(week.Days.Contains),
                proposal.Reasons[week.Number - 1])),
        ];
    }

    /// <summary>All that can be seen of a week's plan; under which id a run lies cannot.</summary>
    private static IEnumerable<object?> Looks(Season season, SeasonWeek week, Setup setup)
    {
        var (phase, block) = (season.PhaseOf(week), season.BlockOf(week));
        return [phase?.Phase, phase?.First == week, block?.Block, block?.First == week, season.KindOf(week.Id), season.TargetOf(week.Id), .. setup.Qualities.Select(quality => (object?)season.EmphasisOf(week.Id, quality.Id))];
    }

    private static string MatchText(Match match, Setup setup) => $"{match.Day!.Value.Short(setup.Locale)} {match.Opponent}{(match.Importance == Importance.Key ? $" ({Web.Words.Say("propose.key")})" : "")}".Trim();

    private static string Words(Season season, SeasonWeek week, Setup setup) => string.Join(" · ", new[]
    {
        season.PhaseOf(week) is { Phase: var phase } ? Core.Sentences.Say($"phase.{phase.Kind}") : null,
        season.KindOf(week.Id) is { } kind ? Core.Sentences.Say($"kind.{kind}") : null,
        season.TargetOf(week.Id) is { } load ? $"{new Points(setup.ReferenceWeek).Of(load)}\u00a0%" : null,
    }.OfType<string>());
}
