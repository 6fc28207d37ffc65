using Seasonwright.Core.Edits;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents;
using Seasonwright.Solver;

namespace Seasonwright.Web.Propose;

/// <summary>A week of the plan beside the same week of another.</summary>
public sealed record ComparedWeek(SeasonWeek Week, WeekLook Now, WeekLook Then, IReadOnlyList<WeekReason> Why)
{
    public bool Differs => new[] { Now, Then }.SelectMany(look => look.Parts).Any(part => part.Differs);

    public static IReadOnlyList<ComparedWeek> Of(Season now, Season then, Setup setup, Proposal proposal) => [.. then.Weeks.Select(week =>
    {
        var old = now.Week(week.Id)!;
        var (matches, plan, emphasis, tests) = (Beside(Matches), Beside(Plan), Beside(Emphases), Beside(Tests));
        return new ComparedWeek(week, new(matches.Now, plan.Now, emphasis.Now, tests.Now), new(matches.Then, plan.Then, emphasis.Then, tests.Then), proposal.Reasons[week.Number - 1]);

        (IReadOnlyList<LookPart> Now, IReadOnlyList<LookPart> Then) Beside(Func<Season, SeasonWeek, Setup, IEnumerable<Trait>> traits)
        {
            var pairs = traits(now, old, setup).Zip(traits(then, week, setup)).ToList();
            return ([.. pairs.Select(pair => pair.First.Beside(pair.Second)).OfType<LookPart>()], [.. pairs.Select(pair => pair.Second.Beside(pair.First)).OfType<LookPart>()]);
        }
    })];

    private static IEnumerable<Trait> Matches(Season season, SeasonWeek week, Setup setup) => season.MatchesIn(week)
        .Select(match => new Trait(match.IsOff, match.IsOff ? "" : $"{match.Day!.Value.Short(setup.Locale)} {match.Opponent}{(match.Importance == Importance.Key ? $" ({Web.Words.Say("propose.key")})" : "")}".Trim()));

    /// <summary>Under which id a run lies cannot be seen.</summary>
    private static IEnumerable<Trait> Plan(Season season, SeasonWeek week, Setup setup)
    {
        var (phase, block, kind, load) = (season.PhaseOf(week), season.BlockOf(week), season.KindOf(week.Id), season.TargetOf(week.Id));
        yield return Run(phase?.Phase, phase is null ? "" : RunWords.Of(phase.Phase), phase?.First == week, isMinor: false);
        yield return Run(block?.Block, block is null ? "" : RunWords.Of(block.Block), block?.First == week, isMinor: true);
        yield return new(kind, kind is null ? "" : Core.Sentences.Say($"kind.{kind}"));
        yield return load is { } target ? new(load, $"{new Points(setup.ReferenceWeek).Of(target)}\u00a0%") { Exactly = $"{target.Au}\u00a0AU" } : new(null, "");

        Trait Run(object? run, string name, bool begins, bool isMinor) => new((run, begins), name, isMinor) { Exactly = run is null ? "" : Web.Words.Say(begins ? "found.begins" : "found.goes-on", name) };
    }

    private static IEnumerable<Trait> Emphases(Season season, SeasonWeek week, Setup setup) => setup.Qualities.Select(quality =>
    {
        var level = season.EmphasisOf(week.Id, quality.Id);
        return new Trait(level, level == Emphasis.Develop ? quality.Name : Web.Words.Say("found.level", quality.Name, Core.Sentences.Say($"emphasis.{level}")), IsMinor: level < Emphasis.Develop);
    });

    private static IEnumerable<Trait> Tests(Season season, SeasonWeek week, Setup setup)
    {
        var tests = season.TestDays.Where(test => week.Days.Contains(test.Day)).ToList();
        var exactly = string.Join(", ", tests.Select(test => $"{test.Day.Short(setup.Locale)} {test.Battery}"));
        yield return new(exactly, tests.Count == 0 ? "" : Web.Words.Say("found.test", string.Join(", ", tests.Select(test => test.Day.Short(setup.Locale))))) { Exactly = exactly };
    }

    /// <summary>Something that can be seen of a week.</summary>
    /// <param name="Value">By which it is the same as another week's.</param>
    /// <param name="IsMinor">Told only where it differs and the other week's is minor, too: else the other week's words tell it.</param>
    private sealed record Trait(object? Value, string Words, bool IsMinor = false)
    {
        /// <summary>Where the words alone do not tell it from another's.</summary>
        public string Exactly { get; init; } = Words;

        /// <returns>Null where there is nothing to say.</returns>
        public LookPart? Beside(Trait other)
        {
            var differs = !Equals(Value, other.Value);
            var words = differs && Words == other.Words ? Exactly : Words;
            return words.Length == 0 || IsMinor && !(differs && other.IsMinor) ? null : new(words, differs);
        }
    }
}

/// <summary>What a week looks like beside another.</summary>
public sealed record WeekLook(IReadOnlyList<LookPart> Matches, IReadOnlyList<LookPart> Plan, IReadOnlyList<LookPart> Emphasis, IReadOnlyList<LookPart> Tests)
{
    public IEnumerable<LookPart> Parts => [.. Matches, .. Plan, .. Emphasis, .. Tests];
}

/// <summary>A part of it, in words.</summary>
/// <param name="Differs">Whether the other week has it otherwise.</param>
public readonly record struct LookPart(string Words, bool Differs);
