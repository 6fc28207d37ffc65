using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Match = Seasonwright.Core.Seasons.Match;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>
/// Small plans in a few letters. A week is "B80": its kind and its load in points; weeks stand behind each other, a phase before
/// the weeks it covers. The normal hard week is 1,000 AU, so one point is 10 AU, and a match loads 10 points.
/// <code>
/// GP: I50 B60       weeks of general preparation; "-" is a week nobody planned, "?60" a load without a kind
/// C70/6             a match on its sixth day; /6! a key match, /6~ a friendly, /6@18:00 with its kick-off
/// C70+s2v1          emphasis: s strength, p power, v speed, a aerobic, h high intensity, y hypertrophy, m prevention; 1 to 3
/// C70t2             a strength test on its second day; t2j one of jumps, t2v one with sprints, t2m one of the most lifted once, t2e an estimate of it
/// C70/6x5           five such weeks
/// *Travel,2.1-2.6   an event from week 2 day 1 to day 6; ",0%" the share of training it leaves; ",2.1+6" a leg with its time
///                   zones, ",2.1@08:00-20:00+6" with its clocks, "20:00n" for the next day
/// C70(p135,L2m)     sessions: practices on days 1, 3 and 5, legs on the morning of the second. See <see cref="SessionsOf"/>; "(0)"
///                   is a week without practices
/// </code>
/// </summary>
internal static partial class Plans
{
    public static readonly DateOnly Monday = new(2027, 7, 5);

    private static readonly Dictionary<char, WeekKind> Kinds = new()
    {
        ['I'] = WeekKind.Introductory,
        ['B'] = WeekKind.Building,
        ['O'] = WeekKind.Overload,
        ['U'] = WeekKind.Unloading,
        ['T'] = WeekKind.Taper,
        ['C'] = WeekKind.Competition,
        ['G'] = WeekKind.Congested,
        ['E'] = WeekKind.ReEntry,
        ['X'] = WeekKind.Break,
        ['R'] = WeekKind.Reduced,
        ['N'] = WeekKind.Transition,
    };

    private static readonly Dictionary<string, PhaseKind> Phases = new(StringComparer.Ordinal)
    {
        ["GP"] = PhaseKind.GeneralPreparation,
        ["SP"] = PhaseKind.SpecificPreparation,
        ["PC"] = PhaseKind.PreCompetition,
        ["CO"] = PhaseKind.Competition,
        ["PK"] = PhaseKind.Peak,
        ["TR"] = PhaseKind.Transition,
    };

    private static readonly Dictionary<char, SessionKind> SessionKinds = new()
    {
        ['p'] = SessionKind.Practice,
        ['L'] = SessionKind.LowerStrength,
        ['D'] = SessionKind.SmallDose,
        ['U'] = SessionKind.UpperStrength,
        ['Y'] = SessionKind.Hypertrophy,
        ['W'] = SessionKind.Power,
        ['S'] = SessionKind.Speed,
        ['I'] = SessionKind.Intervals,
        ['E'] = SessionKind.Endurance,
        ['V'] = SessionKind.Prevention,
        ['A'] = SessionKind.Activation,
        ['R'] = SessionKind.Recovery,
        ['T'] = SessionKind.Test,
    };

    private static readonly Dictionary<char, string> Qualities = new()
    {
        ['s'] = "maximum-strength",
        ['p'] = "power",
        ['v'] = "speed",
        ['a'] = "aerobic",
        ['h'] = "high-intensity",
        ['y'] = "hypertrophy",
        ['m'] = "prevention",
    };

    /// <summary>A team of 1,000 AU a normal hard week and matches of 100 AU, with figures of its own.</summary>
    public static Setup Team(params (string Rule, string Figure, string Value)[] figures) => figures.Select(figure => (SetupEdit)new SetRuleParameter(new(figure.Rule, figure.Figure), figure.Value))
        .Prepend(new SetReferenceWeek(new Load(1000))).Prepend(new SetMatchLoad(new MatchLoad(new Minutes(20), new Rpe(5m), new Rpe(5m))))
        .Aggregate(Setup.Empty(new("team")), (setup, edit) => setup.With(Assert.IsType<Accepted>(Decider.Decide(setup, edit)).Step));

    /// <summary>The same with figures of one rule in words: "caution_up=0.1; warning_up=0.3". Those of another have it before them: "taper-volume.min_drop=0.3".</summary>
    public static Setup Team(string rule, string figures) => Team([.. Figures(rule, figures)]);

    public static IEnumerable<(string Rule, string Figure, string Value)> Figures(string rule, string figures) => figures.Split("; ", StringSplitOptions.RemoveEmptyEntries).Select(figure => figure.Split('=')).Select(pair =>
        pair[0].Contains('-', StringComparison.Ordinal) ? (pair[0][..pair[0].IndexOf('.', StringComparison.Ordinal)], pair[0][(pair[0].IndexOf('.', StringComparison.Ordinal) + 1)..], pair[1]) : (rule, pair[0], pair[1]));

    /// <param name="plan">See <see cref="Plans"/>.</param>
    public static Season Of(string plan, params SeasonEdit[] more)
    {
        List<SeasonEdit> edits = [];
        PhaseKind? phase = null;
        var (number, runs) = (0, 0);
        foreach (var word in plan.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (word.EndsWith(':'))
            {
                (phase, runs) = (Phases[word[..^1]], runs + 1);
                continue;
            }
            if (word[0] == '*')
            {
                edits.Add(Event(word[1..]));
                continue;
            }
            var read = WeekWord().Match(word);
            Assert.True(read.Success, $"\"{word}\" is no week.");
            for (var times = read.Groups["times"] is { Success: true } many ? Whole(many.Value) : 1; times > 0; times--)
            {
                number++;
                if (phase is { } kind) edits.Add(new PaintPhase(Week(number), Week(number), new($"p{runs}"), kind, new($"rest{number}")));
                edits.AddRange(InWeek(number, read));
            }
        }
        var start = new StartSeason(Monday, DayOfWeek.Monday, new(Enumerable.Range(1, number).Select(Week)), new("Harbour Vale"));
        return After(Season.Empty(new("s")), edits.Concat(more).Prepend(start));
    }

    public static Season After(Season season, IEnumerable<SeasonEdit> edits) =>
        edits.Aggregate(season, (now, edit) => now.With(Assert.IsType<Accepted>(Decider.Decide(now, edit)).Step));

    private static IEnumerable<SeasonEdit> InWeek(int number, System.Text.RegularExpressions.Match read)
    {
        var id = Week(number);
        if (Kinds.TryGetValue(read.Groups["kind"].Value[0], out var kind)) yield return new SetWeekKind(id, id, kind);
        if (read.Groups["load"].Success) yield return new SetWeekLoad(id, id, new Load(10 * Whole(read.Groups["load"].Value)));
        foreach (var match in read.Groups["match"].Captures.Select(capture => capture.Value))
        {
            var importance = match.Contains('!', StringComparison.Ordinal) ? Importance.Key : match.Contains('~', StringComparison.Ordinal) ? Importance.Friendly : Importance.Regular;
            yield return Match(number, match[1] - '0', importance, match.IndexOf('@', StringComparison.Ordinal) is > 0 and var at ? TimeOnly.Parse(match[(at + 1)..], CultureInfo.InvariantCulture) : null);
        }
        foreach (var stress in read.Groups["stress"].Captures.Select(capture => capture.Value)) yield return Stress(number, number, Qualities[stress[0]], stress[1] - '0');
        if (read.Groups["sessions"] is { Success: true } sessions)
            foreach (var edit in sessions.Value.Split(',').SelectMany((word, index) => SessionsOf(number, index, word))) yield return edit;
        if (read.Groups["test"] is { Success: true } test) yield return Test(number, test.Value[0] - '0', test.Value[^1] switch { 'j' => "CMJ", 'v' => "Strength, sprint", 'm' => "1RM squat", 'e' => "Squat 5RM", _ => "Strength" });
    }

    /// <summary>
    /// One word of sessions: its kind and days, then what is otherwise than usual, in this order: m, a or e for the slot (ours lie in
    /// the morning, practices in the evening), @17:30 the start, r8 the effort, x40 the minutes, :s6.85 six hard sets of strength at
    /// 85 %, :p80c contacts, :v200m metres, #A only group A, ! called off, = locked.
    /// </summary>
    private static IEnumerable<SeasonEdit> SessionsOf(int week, int index, string word)
    {
        if (word == "0") return [new SetPractices(Week(week), Week(week), new Practices(0))];
        var read = SessionWord().Match(word);
        Assert.True(read.Success, $"\"{word}\" is no session.");
        var kind = SessionKinds[read.Groups["kind"].Value[0]];
        var usual = SessionUse.Of(kind);
        var groups = read.Groups["group"].Captures.Select(capture => new GroupId(capture.Value)).ToList();
        var doses = read.Groups["dose"].Captures.Select(capture => DoseOf(capture.Value)).ToList();
        return read.Groups["days"].Value.Select(day => (SeasonEdit)new SetSession(new Session(
            new($"s{week}.{day}.{index}"), Day(week, day - '0'),
            read.Groups["slot"].Value switch { "m" => DaySlot.Morning, "a" => DaySlot.Afternoon, "e" => DaySlot.Evening, _ => kind == SessionKind.Practice ? DaySlot.Evening : DaySlot.Morning },
            kind,
            read.Groups["minutes"].Success ? new Minutes(Whole(read.Groups["minutes"].Value)) : usual.Minutes,
            read.Groups["rpe"].Success ? new Rpe(decimal.Parse(read.Groups["rpe"].Value, CultureInfo.InvariantCulture)) : usual.Rpe,
            Start: read.Groups["at"].Success ? TimeOnly.Parse(read.Groups["at"].Value, CultureInfo.InvariantCulture) : null,
            Groups: groups.Count > 0 ? new(groups) : null, Doses: doses.Count > 0 ? new(doses) : null,
            IsCancelled: read.Groups["off"].Success, IsLocked: read.Groups["locked"].Success)))
            .Prepend(null).SelectMany(edit => edit is null ? groups.Select(group => (SeasonEdit)new SetGroup(new GroupLine(group, $"Group {group}"))) : [edit]);
    }

    private static Dose DoseOf(string word)
    {
        var read = DoseWord().Match(word);
        int? Number(string group) => read.Groups[group].Success ? Whole(read.Groups[group].Value) : null;
        var unit = read.Groups["unit"].Value;
        return new Dose(new(Qualities[word[0]]), Sets: unit.Length == 0 ? Number("number") : null, Top: Number("top") is { } top ? new Percent(top) : null,
            Contacts: unit == "c" ? Number("number") : null, Metres: unit == "m" ? Number("number") : null);
    }

    private static SetEvent Event(string word)
    {
        var parts = word.Split(',');
        var days = parts[1].Split('-').Select(DayOf).ToList();
        var share = Array.Find(parts, part => part.EndsWith('%'));
        var legs = parts.Skip(2).Where(part => part != share).Select(Leg).ToList();
        return new SetEvent(new Event(new($"e{parts[1]}"), Enum.Parse<EventKind>(parts[0]), "Event", new DaySpan(days[0], days[^1]),
            Training: share is null ? null : new Percent(Whole(share[..^1])), Legs: legs.Count > 0 ? new(legs) : null));
    }

    private static Leg Leg(string word)
    {
        var read = LegWord().Match(word);
        Assert.True(read.Success, $"\"{word}\" is no leg.");
        TimeOnly? Clock(string group) => read.Groups[group].Success ? TimeOnly.Parse(read.Groups[group].Value, CultureInfo.InvariantCulture) : null;
        var day = DayOf(read.Groups["day"].Value);
        return new Leg(day, Departs: Clock("from"), Arrives: Clock("to"), ArrivalDay: read.Groups["next"].Success ? day.AddDays(1) : null,
            ZoneShift: read.Groups["zones"].Success ? decimal.Parse(read.Groups["zones"].Value, CultureInfo.InvariantCulture) : null);
    }

    private static int Whole(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    private static DateOnly DayOf(string word) => Day(Whole(word[..^2]), word[^1] - '0');

    [GeneratedRegex(@"^(?<kind>[A-Z?-])(?<load>\d+)?(?<match>/\d[!~]?(?:@\d\d:\d\d)?)*(?:\+(?<stress>[spvahym]\d)+)?(?:t(?<test>\d[jvme]?))?(?:\((?<sessions>[^)]*)\))?(?:x(?<times>\d+))?$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex WeekWord();

    [GeneratedRegex(@"^(?<kind>[pLDUYWSIEVART])(?<days>[1-7]+)(?<slot>[mae])?(?:@(?<at>\d\d:\d\d))?(?:r(?<rpe>\d+(?:\.5)?))?(?:x(?<minutes>\d+))?(?::(?<dose>[^:#!=]+))*(?:#(?<group>[A-Z]))*(?<off>!)?(?<locked>=)?$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex SessionWord();

    [GeneratedRegex(@"^[spvahym](?<number>\d+)?(?:\.(?<top>\d+))?(?<unit>[cm])?$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex DoseWord();

    [GeneratedRegex(@"^(?<day>\d+\.\d)(?:@(?<from>\d\d:\d\d)-(?<to>\d\d:\d\d)(?<next>n)?)?(?<zones>[+-]\d+)?$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex LegWord();

    public static WeekId Week(int number) => new($"w{number}");

    private static SetMatch Match(int week, int day, Importance importance, TimeOnly? at) =>
        new SetMatch(new Match(new($"m{week}.{day}"), Day(week, day), KickOff: at, Importance: importance));

    public static DateOnly Day(int week, int day) => Monday.AddDays(7 * (week - 1) + day - 1);

    private static SetEmphasis Stress(int first, int last, string quality, int level) => new SetEmphasis(Week(first), Week(last), new(quality), (Emphasis)level);

    private static SetTestDay Test(int week, int day, string battery) => new SetTestDay(new TestDay(new($"t{week}.{day}"), Day(week, day), battery));

    /// <summary>What one rule says to a plan: its findings as "code severity weeks", or how it stands where it has none.</summary>
    public static string Say(string rule, string plan, string figures = "")
    {
        var checkup = Rulebook.Check(Of(plan), Team(rule, figures));
        var findings = checkup.Findings.Where(finding => finding.Rule.Id == rule).OrderBy(finding => finding.Place.First).ThenBy(finding => finding.Code, StringComparer.Ordinal)
            .Select(finding => $"{finding.Code} {finding.Severity.ToString().ToLowerInvariant()} {finding.Place.Weeks}{(finding.IsForced ? " forced" : "")}").ToList();
        return findings.Count > 0 ? string.Join(", ", findings) : checkup.Answers.Single(answer => answer.Rule.Id == rule).State.ToString();
    }
}
