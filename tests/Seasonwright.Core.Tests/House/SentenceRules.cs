using System.Text.RegularExpressions;
using System.Xml.Linq;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Tests.House;

/// <summary>Every sentence that is said exists, and every one that exists is said.</summary>
public partial class SentenceRules
{
    private static readonly Dictionary<string, string> Sentences = XDocument.Load(Path.Combine(Ground.Source, "Seasonwright.Core", "Sentences.resx")).Root!
        .Elements("data").ToDictionary(data => data.Attribute("name")!.Value, data => data.Element("value")!.Value, StringComparer.Ordinal);

    /// <summary>Words of closed lists, said by the value's name.</summary>
    private static readonly IReadOnlyList<string> Words =
    [
        .. Named<PhaseKind>("phase"), .. Named<BlockKind>("block"), .. Named<WeekKind>("kind"), .. Named<Emphasis>("emphasis"),
        .. Named<SessionKind>("session"), .. Named<DaySlot>("slot"), .. Named<EffortKind>("effort"),
        .. Named<MatchStatus>("status"), .. Named<Venue>("match"), .. Named<StaffRole>("staff"),
        .. Named<RestrictionTag>("restriction"), .. Named<AvailabilityState>("availability"), .. Named<ReporterRole>("reporter"), .. Named<ReportedHow>("how"), .. Named<AbsenceKind>("absence"),
        .. Named<MovementPattern>("pattern"), .. Named<Muscle>("muscle"), .. Named<Equipment>("equipment"), .. Named<Demand>("demand"), .. Named<LoadedBy>("loaded"),
        .. SeasonFacets.All.Select(facet => $"comes.{facet}").Except(["comes.frame", "comes.team", .. Behind.Select(facet => $"comes.{facet}")], StringComparer.Ordinal),
        .. Behind.Append("event").Append("week.kind").Select(facet => $"stays.{facet}"),
    ];

    private static IEnumerable<string> Named<T>(string family) where T : struct, Enum => Enum.GetNames<T>().Select(name => $"{family}.{name}");

    /// <summary>Families of which nothing comes along into the next season.</summary>
    private static IEnumerable<string> Behind => ["match", "session", "note", "week.note", "week.wish", "week.lock", "week.ready", "publication", "accepted"];

    private static IEnumerable<string> TextOf(Func<string, bool> room) => Ground.SourceFiles.Where(room).Select(File.ReadAllText);

    private static bool IsCore(string file) => Path.GetRelativePath(Ground.Source, file).StartsWith("Seasonwright.Core", StringComparison.Ordinal);

    [Fact]
    public void What_is_said_exists()
    {
        var refused = TextOf(_ => true).SelectMany(text => Refusals().Matches(text)).Select(match => "refused." + match.Groups["id"].Value).ToList();
        var said = TextOf(IsCore).SelectMany(text => Ids().Matches(text)).Select(match => match.Groups["id"].Value).ToList();
        Assert.True(refused.Count > 60 && said.Count > 60, $"{refused.Count} refusals, {said.Count} sentences found");
        Assert.All(refused.Concat(said).Concat(Words), id => Assert.True(Sentences.ContainsKey(id), $"No sentence '{id}'."));
    }

    [Fact]
    public void What_exists_is_said()
    {
        var source = string.Join('\n', TextOf(_ => true));
        foreach (var id in Sentences.Keys.Except(Words, StringComparer.Ordinal))
        {
            // A refusal is named without its family.
            var shorter = id.StartsWith("refused.", StringComparison.Ordinal) ? id["refused.".Length..] : id;
            Assert.True(source.Contains($"\"{id}\"", StringComparison.Ordinal) || source.Contains($"\"{shorter}\"", StringComparison.Ordinal), $"Nothing says '{id}'.");
        }
    }

    [Fact]
    public void Refusals_are_whole_sentences_that_say_how_to_go_on() => Assert.All(
        Sentences.Where(sentence => sentence.Key.StartsWith("refused.", StringComparison.Ordinal)),
        sentence => Assert.EndsWith(".", sentence.Value, StringComparison.Ordinal));

    [Fact]
    public void Sentences_are_said_without_holes()
    {
        foreach (var (id, text) in Sentences)
        {
            var said = Seasonwright.Core.Sentences.Say(id, [.. Enumerable.Range(1, 5).Select(n => (object)new DateOnly(2027, 7, n))]);
            Assert.DoesNotMatch(Holes(), said);
            Assert.False(string.IsNullOrWhiteSpace(text), id);
        }
    }

    [GeneratedRegex("""Refus(e|al\.Say)\(\s*"(?<id>[a-z-]+)"[,)]""", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Refusals();

    [GeneratedRegex(""" "(?<id>(did|changed|weeks)\.[a-z-]+)" """, RegexOptions.ExplicitCapture | RegexOptions.IgnorePatternWhitespace, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Ids();

    [GeneratedRegex(@"\{\d", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Holes();
}
