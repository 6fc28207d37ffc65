using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Tests.Squad;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>
/// What one rule about players says to a week of a small squad in a small plan (see <see cref="Plans"/>), line by line. Players stand
/// behind "|", each in a few words:
/// <code>
/// a15                 fifteen years old when the season starts, 30 days past the birthday
/// t0  t0-200          0 years of strength training, told on the first day, or 200 days before it
/// out1.1  full2.3     reported by a named clinician from week 1 day 1, from week 2 day 3
/// mod1.1              modified, and nobody said how; mod1.1:NoSprint,NoJump what is ruled out; mod1.1:30 at most 30 minutes a day
/// out1.1>1.5          review agreed for week 1 day 5
/// away1.3-1.5:School  an absence; :NationalTeam:60x6 with 60 minutes at 6 a day, :NationalTeam:300 with 300 AU
/// #A                  in group A from the first day
/// led24               a second squad of the team leads on days 2 and 4
/// </code>
/// </summary>
public abstract partial class SquadTable
{
    public string Rule => Words().Replace(GetType().Name[..^"Tests".Length], "-$0").ToLowerInvariant();

    protected void Check(string plan, string players, int week, string says, string figures) => Assert.Equal(says, Say(Rule, plan, players, week, figures));

    /// <summary>Every line of every table.</summary>
    internal static IEnumerable<(string Rule, string Plan, string Players, int Week, string Says, string Figures)> Lines =>
        from type in typeof(SquadTable).Assembly.GetTypes()
        where type.IsSubclassOf(typeof(SquadTable))
        let rule = ((SquadTable)Activator.CreateInstance(type)!).Rule
        from line in type.GetMethod("Says")!.GetCustomAttributes<InlineDataAttribute>()
        select (rule, (string)line.Data[0]!, (string)line.Data[1]!, (int)line.Data[2]!, (string)line.Data[3]!, line.Data.Length > 4 ? (string)line.Data[4]! : "");

    internal static Checkup Checkup(string rule, string plan, string players, int week, params (string, string, string)[] figures)
    {
        var season = Plans.Of(plan);
        return Rulebook.CheckSquad(season, Plans.Team([.. figures]), Squad(players), season.Weeks[week - 1].Days);
    }

    internal static IReadOnlyList<Player> Squad(string players) => [.. players.Split('|').Select((words, index) =>
        words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Aggregate(AnyPlayer.Of($"player-{index + 1}", "Norlund", $"Ida{index + 1}"), With))];

    /// <summary>The findings of a rule as "code severity weeks", or how it stands where it has none.</summary>
    private static string Say(string rule, string plan, string players, int week, string figures)
    {
        var checkup = Checkup(rule, plan, players, week, [.. Plans.Figures(rule, figures)]);
        var findings = checkup.Findings.Where(finding => finding.Rule.Id == rule).OrderBy(finding => finding.Place.First).ThenBy(finding => finding.Key.ToString(), StringComparer.Ordinal)
            .Select(finding => $"{finding.Code} {finding.Severity.ToString().ToLowerInvariant()} {finding.Value:0.##}").ToList();
        return findings.Count > 0 ? string.Join(", ", findings) : checkup.Answers.Single(answer => answer.Rule.Id == rule).State.ToString();
    }

    private static Player With(Player player, string word)
    {
        var read = Word().Match(word);
        Assert.True(read.Success, $"\"{word}\" says nothing of a player.");
        string Of(string group) => read.Groups[group].Value;
        int Number(string group) => int.Parse(Of(group), CultureInfo.InvariantCulture);
        if (read.Groups["age"].Success) return player.Born(Plans.Monday.AddYears(-Number("age")).AddDays(-30));
        if (read.Groups["years"].Success) return player with { Athlete = player.Athlete with { Training = new TrainingAge(Number("years"), Plans.Monday.AddDays(read.Groups["ago"].Success ? -Number("ago") : 0)) } };
        if (read.Groups["group"].Success) return player.InGroup(Of("group"), Plans.Monday);
        if (read.Groups["led"].Success)
            return player with { Memberships = [.. player.Memberships, new(player.Id, AnyPlayer.Team, Plans.Monday, null, new([.. Of("led").Select(day => Plans.Day(1, day - '0').DayOfWeek)], []), "Second team")] };
        if (read.Groups["kind"].Success)
            return player.AwayFor(Enum.Parse<AbsenceKind>(Of("kind")), new DaySpan(Day(Of("first")), Day(Of("last"))),
                read.Groups["rpe"].Success ? OutsideLoad.Of(new Minutes(Number("load")), new Rpe(Number("rpe"))) : read.Groups["load"].Success ? OutsideLoad.Of(new Load(Number("load"))) : null);
        var availability = Of("state") switch
        {
            "out" => Availability.Out,
            "full" => Availability.Full,
            _ => Availability.Modified(new Restrictions(Of("tags").Split(',', StringSplitOptions.RemoveEmptyEntries).Select(Enum.Parse<RestrictionTag>), read.Groups["cap"].Success ? new Minutes(Number("cap")) : null)),
        };
        return player.Reported(availability, Day(Of("from")), read.Groups["review"].Success ? Day(Of("review")) : null);
    }

    private static DateOnly Day(string word) => word.Split('.') is [var week, var day] ? Plans.Day(int.Parse(week, CultureInfo.InvariantCulture), int.Parse(day, CultureInfo.InvariantCulture)) : throw new FormatException(word);

    [GeneratedRegex("(?<!^)[A-Z]", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Words();

    [GeneratedRegex(@"^(?:a(?<age>\d+)|t(?<years>\d+)(?:-(?<ago>\d+))?|#(?<group>[A-Z])|led(?<led>[1-7]+)|away(?<first>\d+\.\d)-(?<last>\d+\.\d):(?<kind>[A-Za-z]+)(?::(?<load>\d+)(?:x(?<rpe>\d+))?)?|(?<state>out|full|mod)(?<from>\d+\.\d)(?::(?:(?<cap>\d+)|(?<tags>[A-Za-z0-9,]+)))?(?:>(?<review>\d+\.\d))?)$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Word();
}
