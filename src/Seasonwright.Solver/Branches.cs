using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>Both ways a season may go on where a match is played only if something else happens: equal until it is known.</summary>
/// <param name="From">The first day of the first week in which it is known; weeks from here on may differ.</param>
/// <param name="Before">The edits that plan the weeks before it, the same for both ways.</param>
/// <param name="Happens">The match is played.</param>
/// <param name="DoesNot">It is not.</param>
public sealed record Branches(DateOnly From, ValueList<SeasonEdit> Before, Branch Happens, Branch DoesNot)
{
    /// <summary>Weeks after the fork that are worth showing beside each other.</summary>
    public const int Weeks = 8;

    /// <summary>Plans that are made to find the two.</summary>
    public const int Plans = 6;

    /// <summary>
    /// Plans each way alone, then both ways on from the weeks before the fork of each, and keeps the pair with fewer findings that can be
    /// mended, then of more value. A joint model would gain no more than the stages lose between them.
    /// </summary>
    /// <param name="match">The match that may not be played.</param>
    /// <param name="chance">How likely it is played, in per cent; weighs the values of the two ways.</param>
    /// <param name="findings">Counts what the rulebook has against a season and a plan could mend; the engine itself sees no rule.</param>
    /// <param name="id">As for <see cref="Proposals.Of"/>.</param>
    /// <param name="tell">Hears after each how many of the <see cref="Plans"/> are made; null for nobody.</param>
    /// <returns>Null for a match that is not conditional or has no day in the season, and where no week is left once it is known.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Branches? Of(Season season, Setup setup, Wishes wishes, MatchId match, int chance, Func<Season, int> findings, Func<string, string, string> id, Action<int>? tell = null, CancellationToken cancel = default)
    {
        if (season.Match(match) is not { Status: MatchStatus.Conditional } waiting || Fork(season, waiting) is not { } from) return null;
        if (wishes.From > from) from = wishes.From.Value;
        var made = 0;
        var (happens, doesNot) = (Decider.After(season, [Settled(season, waiting, isPlayed: true)]), Decider.After(season, [Settled(season, waiting, isPlayed: false)]));
        doesNot = Decider.After(doesNot, NotPlayedWithout(season, match).Where(other => doesNot.Match(other.Id) is { IsOff: false }).Select(other => new SetMatch(other.CalledOff())));
        return new[] { happens, doesNot }.Select(PlannedFrom).OrderBy(both => both.Happens.Findings + both.DoesNot.Findings).ThenByDescending(both => chance * both.Happens.Proposal.Value + (100 - chance) * both.DoesNot.Proposal.Value).First();

        Branches PlannedFrom(Season alone)
        {
            var proposal = Planned(alone, wishes);
            var before = Proposals.Part(alone, setup, proposal, week => season.Weeks[week].Days.First < from, _ => true, id);
            return new(from, before, On(happens, before), On(doesNot, before));
        }

        Branch On(Season way, ValueList<SeasonEdit> before)
        {
            var planned = Decider.After(way, before);
            var proposal = Planned(planned, wishes with { From = from });
            planned = Decider.After(planned, proposal.Edits);
            return new(planned, proposal, findings(planned));
        }

        Proposal Planned(Season way, Wishes asked)
        {
            var proposal = Proposals.Of(way, setup, asked, 1, id, cancel: cancel)[0];
            tell?.Invoke(++made);
            return proposal;
        }
    }

    /// <summary>The conditional matches that are not played where one is not: itself, those under the same condition, and what hangs on any of them in turn.</summary>
    public static IReadOnlyList<Match> NotPlayedWithout(Season season, MatchId match)
    {
        var open = season.AllMatches.Where(other => other.Status == MatchStatus.Conditional).ToList();
        var waiting = open.Find(other => other.Id == match);
        List<Match> found = [.. open.Where(other => other.Id == match || waiting is not null && IsUnderTheSame(waiting, other))];
        for (var at = 0; at < found.Count; at++) found.AddRange(open.Where(other => HangsOn(found[at], other) && !found.Contains(other)));
        return found;
    }

    /// <summary>Words alone mean the same only within a competition: "if needed" is said in many.</summary>
    private static bool IsUnderTheSame(Match one, Match other) => (one.Condition, other.Condition) switch
    {
        ({ On: { } on } here, { } there) => (on, here.Needs) == (there.On, there.Needs),
        ({ Words: { } words }, { On: null } there) => one.Competition == other.Competition && string.Equals(words, there.Words, StringComparison.OrdinalIgnoreCase),
        _ => false,
    };

    /// <summary>A match waits for another by name, and a game of a series for those before it.</summary>
    private static bool HangsOn(Match decided, Match other) => other.Condition?.On == decided.Id
        || (decided.Series, other.Series) is ({ } series, { } its) && decided.Competition == other.Competition && series.Name == its.Name && its.Game > series.Game;

    /// <summary>The week after the deciding match; where none is named, the week of the first match under the condition.</summary>
    private static DateOnly? Fork(Season season, Match waiting)
    {
        var decided = waiting.Condition?.On is { } on ? season.Match(on)?.Days?.Last : null;
        var days = season.AllMatches.Where(other => other.Id == waiting.Id || other.Status == MatchStatus.Conditional && IsUnderTheSame(waiting, other)).Select(other => other.Day).OfType<DateOnly>().ToList();
        return season.Weeks.Where(week => decided is { } day ? week.Days.First > day : days.Exists(week.Days.Contains)).Select(week => (DateOnly?)week.Days.First).FirstOrDefault();
    }

    private static SeasonEdit Settled(Season season, Match waiting, bool isPlayed)
    {
        if (waiting.Condition is { On: { } on } condition && season.Match(on) is not null)
            return new SettleMatch(on, isPlayed ? condition.Needs : condition.Needs == Outcome.Won ? Outcome.Lost : Outcome.Won);
        return new SetMatch(isPlayed ? waiting with { Status = waiting.LastDay is null ? MatchStatus.Confirmed : MatchStatus.Window, Condition = null } : waiting.CalledOff());
    }
}

/// <summary>One way on.</summary>
/// <param name="Season">With the match settled and the plan in it.</param>
/// <param name="Proposal">From the fork on.</param>
/// <param name="Findings">Of the rulebook that can be mended.</param>
public sealed record Branch(Season Season, Proposal Proposal, int Findings);
