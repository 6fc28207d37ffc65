using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

public class WhatChangedLaws
{
    /// <summary>Everything a head coach is told of, for the weeks of one season as another one sees them.</summary>
    private static FactSet Spoken(Season season, Season latest)
    {
        string[] whole = ["match", "event", "test", "session", "note", "goal"];
        var facts = season.Facts.Keys.Where(key => whole.Contains(key.Facet, StringComparer.Ordinal)).Aggregate(FactSet.Empty, (sum, key) => sum.With(key, season.Facts[key]));
        facts = facts.With(new Key("days", ""), season.Days);
        foreach (var id in latest.Weeks.Select(week => week.Id))
        {
            var (text, week) = (id.Text, season.Week(id));
            facts = facts.With(new Key("load", text), season.TargetOf(id));
            foreach (var (subject, emphasis) in season.Facts.All(SeasonFacets.WeekEmphasis).Where(fact => fact.Subject.First == id))
                facts = facts.With(new Key("emphasis", subject.ToString()), emphasis);
            if (week is null) continue;
            facts = facts
                .With(new Key("phase", text), season.PhaseOf(week) is { } phase ? RunWords.Of(phase.Phase) : null)
                .With(new Key("block", text), season.BlockOf(week) is { } block ? RunWords.Of(block.Block) : null)
                .With(new Key("kind", text), season.KindOf(id))
                .With(new Key("practices", text), season.PracticesOf(id))
                .With(new Key("wish", text), season.PracticeWishOf(id));
        }
        return facts;
    }

    [Fact]
    public void It_is_silent_exactly_when_nothing_it_speaks_of_differs()
    {
        var (silent, spoke) = (0, 0);
        Gen.Select(AnySeason.Season, AnyEdit.SeasonEdit.Array[0, 4]).Sample((before, edits) =>
        {
            var after = edits.Aggregate(before, (season, edit) => Decider.Decide(season, edit) is Accepted accepted ? season.With(accepted.Step) : season);
            var lines = WhatChanged.Between(before, after, TeamSetup);
            Assert.Equal(Spoken(before, after).Equals(Spoken(after, after)), lines.Count == 0);
            Assert.All(lines, line => Assert.False(string.IsNullOrWhiteSpace(line)));
            Interlocked.Increment(ref lines.Count == 0 ? ref silent : ref spoke);
            Assert.Empty(WhatChanged.Between(after, after, TeamSetup));
        }, iter: 400);
        Assert.True(silent > 0 && spoke > 0);
    }

    // 2,000 AU are 80 % of it.
    private static readonly Setup TeamSetup = Done(Done(Setup.Empty(new("team")), new SetReferenceWeek(new Load(2500))), new SetQuality(new Quality(new("power"), "Power", QualityKind.Power, 0)));

    private static Setup Done(Setup setup, SetupEdit edit) => setup.With(Assert.IsType<Accepted>(Decider.Decide(setup, edit)).Step);

    private static readonly Session Gym = new(new("gym"), new(2027, 7, 6), DaySlot.Morning, SessionKind.LowerStrength, new Minutes(60), new Rpe(7));

    private static readonly Season Season = History.After(
        new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Enumerable.Range(1, 20).Select(n => new WeekId($"w{n}")).ToValueList(), new("Harbour Vale")),
        new PaintPhase(new("w1"), new("w8"), new("p"), PhaseKind.GeneralPreparation, new("x")),
        new SetMatch(new Match(new("m"), new DateOnly(2027, 10, 16), Opponent: "Turnes", Venue: Venue.Home)),
        new SetEvent(new Event(new("e"), EventKind.Camp, "Camp", new DaySpan(new(2027, 8, 2), new(2027, 8, 6)))),
        new SetSession(Gym));

    public static TheoryData<SeasonEdit, string[]> Examples => new()
    {
        { new SetMatch(new Match(new("n"), new DateOnly(2027, 10, 20), Opponent: "Öster", Venue: Venue.Away)), ["New: Wed 20 Oct 2027, away at Öster"] },
        { new RemoveMatch(new("m")), ["Gone: Sat 16 Oct 2027, home v Turnes"] },
        { new MoveMatch(new("m"), new DateOnly(2027, 10, 17)), ["Sat 16 Oct 2027, home v Turnes is now Sun 17 Oct 2027, home v Turnes"] },
        { new SetMatch(new Match(new("m"), new DateOnly(2027, 10, 16), Opponent: "Turnes", Venue: Venue.Home, KickOff: new TimeOnly(18, 0))), ["Sat 16 Oct 2027, home v Turnes: kick-off open → 18:00"] },
        { new SetMatch(new Match(new("m"), new DateOnly(2027, 10, 17), Opponent: "Turnes", Venue: Venue.Home, KickOff: new TimeOnly(18, 0), Status: MatchStatus.Provisional)), ["Sat 16 Oct 2027, home v Turnes is now Sun 17 Oct 2027, home v Turnes; kick-off open → 18:00; status confirmed → provisional"] },
        { new SetMatch(new Match(new("m"), new DateOnly(2027, 10, 16), Opponent: "Turnes", Venue: Venue.Home, Competition: "League", Place: "Quay Hall", Importance: Importance.Key, Note: "for us")), ["Sat 16 Oct 2027, home v Turnes: competition open → League; place open → Quay Hall; importance changed; note changed"] },
        { new SettleMatch(new("m"), Outcome.Won), ["Sat 16 Oct 2027, home v Turnes: won"] },
        { new SettleMatch(new("m"), Outcome.Lost), ["Sat 16 Oct 2027, home v Turnes: lost"] },
        { new SetEvent(new Event(new("e"), EventKind.Camp, "Camp", new DaySpan(new(2027, 8, 2), new(2027, 8, 6)), Part: "pm", For: "Backs", Training: new Percent(50), Provisional: true, Nights: 4)), ["Camp, Mon 2 Aug 2027 to Fri 6 Aug 2027: part of the day open → pm; for open → Backs; training open → 50 %; certain yes → no; nights away open → 4"] },
        { new SetMatch(new Match(new("m"), new DateOnly(2027, 10, 16), Opponent: "Turnes", Venue: Venue.Home, Status: MatchStatus.Cancelled)), ["Off: Sat 16 Oct 2027, home v Turnes (cancelled)"] },
        { new SetMatch(new Match(new("n"), null, Status: MatchStatus.Conditional)), ["New: undated, v unknown"] },
        { new SetMatch(new Match(new("n"), new DateOnly(2027, 12, 6), new DateOnly(2027, 12, 12), Venue: Venue.Neutral, Status: MatchStatus.Window)), ["New: Mon 6 Dec 2027 to Sun 12 Dec 2027, neutral v unknown"] },
        { new SetEvent(new Event(new("e"), EventKind.Camp, "Camp", new DaySpan(new(2027, 8, 2), new(2027, 8, 6)), Source: new EventSource("club.csv", "Camp", Vanished: true))), ["Camp, Mon 2 Aug 2027 to Fri 6 Aug 2027: on its list yes → no"] },
        { new RemoveEvent(new("e")), ["Gone: Camp, Mon 2 Aug 2027 to Fri 6 Aug 2027"] },
        { new SetTestDay(new TestDay(new("d"), new DateOnly(2027, 7, 8), "Jump")), ["New: Jump, Thu 8 Jul 2027"] },
        { new SetSession(Gym with { Id = new("new"), Day = new(2027, 7, 8) }), ["New: Lower-body strength, Thu 8 Jul 2027, morning"] },
        { new SetSession(Gym with { Day = new(2027, 7, 7), Minutes = new Minutes(40) }), ["Lower-body strength, Tue 6 Jul 2027, morning is now Lower-body strength, Wed 7 Jul 2027, morning; shortened to 40 min"] },
        { new SetSession(Gym with { IsCancelled = true }), ["Lower-body strength, Tue 6 Jul 2027, morning: cancelled"] },
        { new RemoveSession(Gym.Id), ["Gone: Lower-body strength, Tue 6 Jul 2027, morning"] },
        { new SetNote(new Note(new("o"), DaySpan.Of(new(2027, 7, 8)), "Hall closed")), ["New: \"Hall closed\", Thu 8 Jul 2027"] },
        { new SetGoal(new Goal(new("g"), 1, "Countermovement jump, cm")), ["New: Countermovement jump, cm"] },
        { new PaintPhase(new("w8"), new("w10"), new("q"), PhaseKind.Competition, new("x"), "League"), ["Phase from Mon 23 Aug 2027 to Sun 29 Aug 2027: League (was General preparation)", "Phase from Mon 30 Aug 2027 to Sun 12 Sep 2027: League (was nothing)"] },
        { new PaintBlock(new("w1"), new("w1"), new("b"), BlockKind.ReEntry, new("x")), ["Block from Mon 5 Jul 2027 to Sun 11 Jul 2027: Re-entry (was nothing)"] },
        { new SetWeekKind(new("w2"), new("w3"), WeekKind.Building), ["Weeks 2 to 3, Mon 12 Jul 2027 to Sun 25 Jul 2027: building (was nothing)"] },
        { new SetWeekLoad(new("w2"), new("w3"), new Load(2000)), ["Weeks 2 to 3, Mon 12 Jul 2027 to Sun 25 Jul 2027: load 80 % (was nothing)"] },
        { new SetEmphasis(new("w2"), new("w2"), new("power"), Emphasis.Focus), ["Week 2, Mon 12 Jul 2027 to Sun 18 Jul 2027: more Power"] },
        { new SetPractices(new("w2"), new("w2"), new Practices(3)), ["Week 2, Mon 12 Jul 2027 to Sun 18 Jul 2027: practices 3 (was nothing)"] },
        { new SetPractices(new("w2"), new("w2"), new Practices(3, new Minutes(90), new Rpe(5.5m))), ["Week 2, Mon 12 Jul 2027 to Sun 18 Jul 2027: practices 3, 90 min, RPE 5.5 (was nothing)"] },
        { new Resize(10, ValueList<WeekId>.Empty), ["The season runs Mon 5 Jul 2027 to Sun 12 Sep 2027 (was Mon 5 Jul 2027 to Sun 21 Nov 2027)"] },
        { new SetPracticeWish(new("w2"), "Keep Thursday short"), ["Week 2, Mon 12 Jul 2027 to Sun 18 Jul 2027: wished of practice: Keep Thursday short (was nothing)"] },
        { new SetWeekNote(new("w1"), "for myself"), [] },
        { new LockWeeks(new("w1"), new("w2"), true), [] },
    };

    [Theory]
    [MemberData(nameof(Examples))]
    public void In_dates_and_names(SeasonEdit edit, string[] lines) =>
        Assert.Equal(lines, WhatChanged.Between(Season, History.After(Season, edit), TeamSetup), StringComparer.Ordinal);
}
