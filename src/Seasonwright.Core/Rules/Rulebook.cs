using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules;

/// <summary>All rules, and what they say to a plan.</summary>
public static class Rulebook
{
    /// <summary>
    /// Every rule in its order of running: medical and privacy first, the gate for thin data, governing bodies, youth, heat, then
    /// athlete, day, week, block and season.
    /// </summary>
    public static ValueList<Rule> All { get; } =
    [
        OfAthlete.MedicalDetailShared.Rule,
        OfAthlete.RestrictionOverridesPlan.Rule,
        OfAthlete.ConcussionClearance.Rule,
        OfAthlete.HealthPointer.Rule,
        OfAthlete.IllnessReturn.Rule,
        OfAthlete.ThinDataGate.Rule,
        OfWeek.WeeklyHoursPreset.Rule,
        OfWeek.ContactMinutesPreset.Rule,
        OfSeason.YouthSeasonLength.Rule,
        OfWeek.YouthWeeklyHours.Rule,
        OfWeek.YouthRestDays.Rule,
        OfDay.YouthStrengthSpacing.Rule,
        OfAthlete.GrowthSpurt.Rule,
        OfDay.HeatAcclimatisation.Rule,
        OfDay.WbgtLimit.Rule,
        OfAthlete.ReturnAfterBreakVolume.Rule,
        OfAthlete.ReturnAfterBreakStrength.Rule,
        OfAthlete.InjuryReturnRamp.Rule,
        OfAthlete.SessionsBeforeFirstMatch.Rule,
        OfAthlete.WellnessDrop.Rule,
        OfAthlete.EffortMismatch.Rule,
        OfAthlete.TestConditionsDiffer.Rule,
        OfAthlete.TestChangeWithinNoise.Rule,
        OfAthlete.NoviceMaxTest.Rule,
        OfDay.MatchGapShort.Rule,
        OfDay.HeavyLowerBeforeMatch.Rule,
        OfDay.HeavySessionSpacing.Rule,
        OfDay.HardDaysInARow.Rule,
        OfDay.PrimingWindow.Rule,
        OfDay.DayAfterMatchHard.Rule,
        OfDay.DayBeforeMatchHeavy.Rule,
        OfDay.SameDayStrengthEndurance.Rule,
        OfDay.PlyoContacts.Rule,
        OfDay.SessionRepsByIntensity.Rule,
        OfDay.LoadStepSize.Rule,
        OfDay.TestOrder.Rule,
        OfDay.SupervisionRatio.Rule,
        OfDay.TimeZoneArrival.Rule,
        OfDay.TravelDayLoad.Rule,
        OfWeek.WeeklyRamp.Rule,
        OfWeek.TrailingFourSpike.Rule,
        OfWeek.BaseLoadLow.Rule,
        OfWeek.MonotonyAndStrain.Rule,
        OfWeek.SingleExposureSpike.Rule,
        OfWeek.HeavyWeekInCongestion.Rule,
        OfWeek.FullRestDayMissing.Rule,
        OfWeek.WeeklySetsRange.Rule,
        OfWeek.HeavyExposureRange.Rule,
        OfWeek.SprintExposureGap.Rule,
        OfWeek.HamstringEccentricGap.Rule,
        OfWeek.MatchesPerWeek.Rule,
        OfWeek.MinutesTopUp.Rule,
        OfWeek.TestTiming.Rule,
        OfBlock.QualityOrder.Rule,
        OfBlock.HypertrophyLate.Rule,
        OfBlock.RealisationWindowMissing.Rule,
        OfBlock.QualityLeftIdle.Rule,
        OfBlock.StrengthFrequencyInSeason.Rule,
        OfBlock.AerobicUpkeep.Rule,
        OfSeason.TransitionLength.Rule,
        OfSeason.TransitionWithoutUpkeep.Rule,
        OfSeason.PrepWeeksShort.Rule,
        OfSeason.GeneralBeforeSpecific.Rule,
        OfSeason.BuildingRunTooLong.Rule,
        OfSeason.UnloadingSize.Rule,
        OfSeason.TaperLength.Rule,
        OfSeason.TaperVolume.Rule,
        OfSeason.TaperIntensityFrequency.Rule,
        OfSeason.PeaksTooMany.Rule,
        OfSeason.MidseasonBreakMissing.Rule,
    ];

    /// <summary>One message for one cause: where a rule has spoken about a week, the other is silent there. The code narrows it to some of its findings.</summary>
    private static readonly (string Speaks, string? With, string Silent, string? Code)[] OneCause =
    [
        ("heavy-week-in-congestion", null, "weekly-ramp", null),
        ("heavy-lower-before-match", null, "day-before-match-heavy", null),
        ("heavy-week-in-congestion", null, "hard-days-in-a-row", null),
        ("heavy-lower-before-match", null, "hard-days-in-a-row", "match"),
        ("day-before-match-heavy", null, "hard-days-in-a-row", "match"),
        ("day-after-match-hard", null, "hard-days-in-a-row", "match"),
        ("match-gap-short", null, "matches-per-week", null),
        ("taper-length", "missing", "taper-volume", null),
        ("taper-length", "missing", "taper-intensity-frequency", null),
        ("sprint-exposure-gap", null, "quality-left-idle", "max_speed"),
        ("strength-frequency-in-season", "gap", "quality-left-idle", "max_strength"),
        ("aerobic-upkeep", null, "quality-left-idle", "aerobic_endurance"),
        ("aerobic-upkeep", null, "quality-left-idle", "anaerobic_glycolytic"),
        ("return-after-break-volume", null, "weekly-ramp", null),
        ("return-after-break-volume", null, "trailing-four-spike", null),
        ("weekly-ramp", null, "trailing-four-spike", null),
    ];

    /// <exception cref="InvalidOperationException">No rule has this id.</exception>
    public static Rule Of(string id) => All.Single(rule => rule.Id == id);

    /// <summary>Null where this version has no rule of this id.</summary>
    public static Rule? Find(string id) => All.FirstOrDefault(rule => rule.Id == id);

    /// <summary>Free days of a week for one athlete, as the rules count them: no session, match, test or long travel.</summary>
    /// <param name="group">Whose; null for the athlete who has the most.</param>
    /// <returns>Null while the week is not laid out.</returns>
    public static int? FreeDays(Season season, Setup setup, SeasonWeek week, GroupId? group)
    {
        var plan = new Plan(season, setup);
        var whose = group ?? Loads.AthleteSessions.WhoHasMost(season, week);
        var athlete = new AthleteDays(season.Days!.Value, season.Groups.FirstOrDefault(line => line.Id == whose), plan.Sessions);
        return new FreeDays(plan, athlete, new Figures(OfWeek.FullRestDayMissing.Rule.Id, setup).Number(OfWeek.FullRestDayMissing.TravelCountsH)).Count(week.Days.First, week.Days.Last);
    }

    /// <summary>Above this monotony the rulebook speaks.</summary>
    public static decimal MostMonotony(Setup setup) => new Figures(OfWeek.MonotonyAndStrain.Rule.Id, setup).Number(OfWeek.MonotonyAndStrain.CautionM);

    /// <summary>The age below which a team lets nobody be tested for the most lifted once, where it has set one itself.</summary>
    public static decimal? OwnAgeOfMaxTests(Setup setup) =>
        setup.RuleParameter(new(OfAthlete.NoviceMaxTest.Rule.Id, OfAthlete.NoviceMaxTest.YouthAge.Name)) is null ? null : new Figures(OfAthlete.NoviceMaxTest.Rule.Id, setup).Number(OfAthlete.NoviceMaxTest.YouthAge);

    /// <summary>Asks every rule. The answer does not depend on the order they are asked in.</summary>
    public static Checkup Check(Season season, Setup setup) => Check(season, setup, All);

    internal static Checkup Check(Season season, Setup setup, IEnumerable<Rule> rules)
    {
        if (!season.IsStarted) return Checkup.Empty;
        var plan = new Plan(season, setup);
        return Heard(rules, rule => rule.Looks?.Invoke(plan, new Figures(rule.Id, setup)), setup, season.Accepted);
    }

    /// <summary>
    /// Asks the rules about players of some days. What they find is about people: it is looked at and goes with them, is never
    /// accepted into the log, is in no paper and holds no publishing back.
    /// </summary>
    /// <param name="setup">Of the season's team.</param>
    public static Checkup CheckSquad(Season season, Setup setup, IEnumerable<Player> players, DaySpan days)
    {
        if (!season.IsStarted) return Checkup.Empty;
        var squad = new SquadPlan(new Plan(season, setup), players, days);
        return Heard(All.Where(rule => rule.IsOfPlayers), rule => rule.LooksAtPlayers?.Invoke(squad, new Figures(rule.Id, setup)), setup, []);
    }

    /// <param name="looks">What a rule says of each place; null where nothing feeds it.</param>
    private static Checkup Heard(IEnumerable<Rule> rules, Func<Rule, IEnumerable<Look>?> looks, Setup setup, IEnumerable<(FindingKey Finding, Acceptance Acceptance)> acceptances)
    {
        var asked = rules.Select(rule => (Rule: rule, Looks: rule.IsOn(setup) ? looks(rule)?.ToList() : null)).ToList();
        var spoken = asked.SelectMany(answer => (answer.Looks ?? []).OfType<Breach>().Select(breach => (answer.Rule, Breach: breach))).ToLookup(said => said.Rule.Id, StringComparer.Ordinal);
        var heard = asked.Select(answer => (answer.Rule, answer.Looks, Breaches: (answer.Looks ?? []).OfType<Breach>().Where(breach => !IsSaidAlready(answer.Rule, breach, spoken, setup)).ToList())).ToList();
        var findings = heard.SelectMany(answer => Joined(answer.Rule, answer.Breaches, setup))
            .OrderByDescending(finding => finding.Severity).ThenBy(finding => finding.IsForced).ThenByDescending(finding => finding.Weight).ThenBy(finding => finding.Place.First).ThenBy(finding => finding.Key.ToString(), StringComparer.Ordinal).ToList();
        var accepted = acceptances.ToDictionary(entry => entry.Finding, entry => entry.Acceptance);
        return new Checkup(
            findings.Where(finding => !IsAccepted(finding)).ToValueList(),
            findings.Where(IsAccepted).Select(finding => new AcceptedFinding(finding, accepted[finding.Key])).ToValueList(),
            heard.OrderBy(answer => answer.Rule.Id, StringComparer.Ordinal).Select(answer => RuleAnswer.Of(answer.Rule, setup, answer.Looks, answer.Breaches.Count)).ToValueList());

        bool IsAccepted(Finding finding) => accepted.TryGetValue(finding.Key, out var acceptance) && finding.IsCoveredBy(acceptance);
    }

    /// <summary>What is said more gently elsewhere is not said already.</summary>
    private static bool IsSaidAlready(Rule rule, Breach breach, ILookup<string, (Rule Rule, Breach Breach)> spoken, Setup setup) => Array.Exists(OneCause, cause =>
        cause.Silent == rule.Id && (cause.Code is null || cause.Code == breach.Code)
        && spoken[cause.Speaks].Any(said => (cause.With is null || cause.With == said.Breach.Code) && said.Breach.Place.Touches(breach.Place)
            && SeverityOf(said.Rule, said.Breach, setup) >= SeverityOf(rule, breach, setup)));

    /// <summary>Breaches of one kind in weeks side by side, or about the same thing, are one finding, told by the worst of them.</summary>
    private static IEnumerable<Finding> Joined(Rule rule, List<Breach> breaches, Setup setup)
    {
        if (breaches.Count == 0) yield break;
        var inForce = rule.InForce(setup);
        foreach (var kind in breaches.GroupBy(breach => (breach.Code, breach.Place.IsWeeks, Person: breach.Place.IsPlayer ? breach.Place.About : null)))
        {
            List<Breach> run = [];
            foreach (var breach in kind.OrderBy(breach => breach.Place.First).ThenBy(breach => breach.Place.About, StringComparer.Ordinal))
            {
                if (run.Count > 0 && breach.Place.About != run[0].Place.About && !(kind.Key.IsWeeks && breach.Place.First <= run.Max(other => other.Place.Last) + 1))
                {
                    yield return Told(rule, run, setup, inForce);
                    run = [];
                }
                run.Add(breach);
            }
            yield return Told(rule, run, setup, inForce);
        }
    }

    private static Finding Told(Rule rule, List<Breach> run, Setup setup, string inForce)
    {
        var worst = run.Count == 1 ? run[0] : run.OrderByDescending(breach => breach.Severity).ThenByDescending(breach => breach.Weight).First();
        var place = run[0].Place with { Last = run.Max(breach => breach.Place.Last) };
        var said = RuleWords.Say($"{rule.Id}.says.{worst.Code}", [.. worst.Numbers]);
        if (worst.Whose is { } whose) said = RuleWords.Say("run.whose", said, whose);
        return new Finding(
            rule, worst.Code, place, SeverityOf(rule, worst, setup),
            run.Count == 1 ? said : RuleWords.Say(place.First == place.Last ? "run.week" : "run.more", said, run.Count, place.First, place.Last, worst.Place.Weeks),
            worst.Value, worst.Limit, worst.Figure, run.Sum(breach => breach.Size), run.Max(breach => breach.Size), run.TrueForAll(breach => breach.IsForced || breach.Severity < worst.Severity) && worst.IsForced,
            run.Count == 1 ? worst.Remedy : run.SelectMany(breach => breach.Remedy).Distinct().ToValueList(), run.Count, inForce);
    }

    /// <summary>A contested rule is never called more than the team lets it.</summary>
    private static Severity SeverityOf(Rule rule, Breach breach, Setup setup) => rule.HighestFor(setup) is var most && breach.Severity > most ? most : breach.Severity;
}
