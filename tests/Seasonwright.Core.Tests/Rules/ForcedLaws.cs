using System.Text.RegularExpressions;
using CsCheck;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>"Forced" is a promise: matches and events alone bring it about, whatever is painted.</summary>
public partial class ForcedLaws
{
    private static readonly string[] OfCalendar = ["match-gap-short", "matches-per-week", "midseason-break-missing", "prep-weeks-short", "time-zone-arrival", "travel-day-load"];

    private static readonly Gen<string> Matches = Gen.Select(Gen.Int[1, 7], Gen.OneOf("", "!", "~"), Gen.OneOf("", "", "@11:00", "@20:30"), (day, importance, time) => $"/{day}{importance}{time}")
        .Array[0, 3].Select(matches => string.Concat(matches));

    private static readonly Gen<string> Week = Gen.Select(Gen.OneOf("GP: ", "SP: ", "CO: ", "TR: ", "", "", "", "", "", ""), Gen.OneOf('B', 'C', 'U', 'T', 'G', 'E', 'X', 'N', '-', '?'), Gen.Int[20, 110], Matches, Gen.OneOf("", "+s2", "+v1h2t3", "t6"),
        (phase, kind, load, matches, more) => $"{phase}{kind}{load}{matches}{more}");

    private static readonly Gen<string> Event = Gen.Select(Gen.Int[1, 8], Gen.OneOf("*Travel,{0}.1-{0}.7,{0}.1@20:00-06:00n+5", "*Travel,{0}.2-{0}.7,{0}.2-4", "*Holiday,{0}.1-{0}.7,0%", "*Tournament,{0}.1-{0}.5", "*Exams,{0}.1-{0}.7,30%"),
        (week, words) => words.Replace("{0}", $"{week}", StringComparison.Ordinal));

    private static readonly Gen<string> Plan = Gen.Select(Week.Array[8, 20], Event.Array[0, 3], (weeks, events) => string.Join(' ', [.. weeks, .. events]));

    [Fact]
    public void What_is_forced_stands_when_nothing_is_painted()
    {
        var met = new HashSet<string>(StringComparer.Ordinal);
        Plan.Sample(plan => Check(plan, "midseason-break-missing.min_phase_weeks=4", met), iter: 120, threads: 1);
        Assert.All(RuleTable.Lines, line => Check(line.Plan, line.Figures.Length > 0 && !line.Figures.Contains('-', StringComparison.Ordinal) ? $"{line.Rule}.{line.Figures.Replace("; ", $"; {line.Rule}.", StringComparison.Ordinal)}" : line.Figures, met));
        // A rule that was never met would make this law empty for it.
        Assert.Equal(OfCalendar, met.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    private static void Check(string plan, string figures, HashSet<string> met)
    {
        var setup = Plans.Team("weekly-ramp", figures);
        var bare = Rulebook.Check(Plans.Of(Painted().Replace(plan, match => match.Groups["matches"].Success ? $"-{match.Groups["matches"].Value}" : "")), setup).Findings;
        foreach (var finding in Rulebook.Check(Plans.Of(plan), setup).Findings.Where(finding => finding.IsForced && OfCalendar.Contains(finding.Rule.Id, StringComparer.Ordinal)))
        {
            Assert.True(bare.Any(other => other.Rule == finding.Rule && other.IsForced && other.Severity >= finding.Severity && other.Place.First <= finding.Place.Last && finding.Place.First <= other.Place.Last), $"{plan}: {finding.Sentence}");
            met.Add(finding.Rule.Id);
        }
    }

    /// <summary>A phase, or a week with its matches caught.</summary>
    [GeneratedRegex(@"(?<=^| )(?:[A-Z]{2}: ?|[A-Z?-]\d*(?<matches>(?:/\d[!~]?(?:@\d\d:\d\d)?)*)(?:\+(?:[a-z]\d)+)?(?:t\dj?)?(?=$| |x))", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Painted();
}
