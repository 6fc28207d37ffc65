using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Documents.Tests.HandOut;

/// <summary>Seasons as nobody should bring them: names that are formulas or break lines, no weeks, too many, far years. Made of facts, past every rule of the edits.</summary>
internal static class HostileSeasons
{
    private static readonly string[] Texts =
    [
        "=HYPERLINK(\"http://example.invalid\",\"Turnes\")", "=cmd|' /C calc'!A0", "+1+1", "-2+3", "@SUM(A1:A9)", "\t=1+1", "\r\n=1+1", "'=1+1", "=", "-", "\"", "'",
        "Turnes\r\nEND:VEVENT\r\nBEGIN:VEVENT", "a;b,c\\d:e", "\u0000\u0007\u001bTurnes\u007f\u0085", "\ud800half", "half\udc00", "\ufffe\uffff", "\u202eevil\u2066", "x\u2028y\u2029z",
        "🤾🏽‍♀️👩‍👩‍👧🏳️‍🌈🤾🏽‍♀️👩‍👩‍👧🏳️‍🌈🤾🏽‍♀️", "ישראל כץ", "النادي الرياضي", "港湾ハンドボール部", "_x0041_ _x000D_ _xD800_", "&L&P&\"Arial\"&24", "</t></is></c><script>", "<![CDATA[]]>&amp;&#0;",
        new string('W', 120), new string('&', 120), string.Concat(Enumerable.Repeat("word after word ", 125)), new string('ß', 120), string.Concat(Enumerable.Repeat("🤾", 60)), "  ", "", "Harbour Vale", "TRUE", "1/2", "1e5", "#REF!", "{0} {1:N", "ﷺ", "e\u0301\u0301\u0301",
    ];

    private static readonly string[] Zones =
        ["Europe/Copenhagen", "America/New_York", "Etc/UTC", "Africa/Casablanca", "Pacific/Apia", "Australia/Lord_Howe", "Asia/Kathmandu", "America/Sao_Paulo", "Antarctica/Troll"];

    private static readonly int[] Lengths = [0, 1, 1, 2, 7, 40, 53, 60, 106];

    /// <summary>A hundred of them, each with a setup; the same each time.</summary>
    public static IEnumerable<(Season Season, Setup Setup)> All => Enumerable.Range(1, 100).Select(seed => new Maker(seed)).Select(maker => (maker.Season(), maker.Setup()));

    private sealed class Maker(int seed)
    {
        private readonly Random random = new(seed);
        private int ids;

        // The first ones are the edges; then anything.
        private readonly int weeks = Lengths[seed % Lengths.Length];
        private readonly int year = seed switch { 1 or 2 or 3 => 1901, 4 or 5 or 6 => 2199, _ => 1950 + seed * 37 % 200 };

        private DateOnly First => new DateOnly(year, 1 + seed % 12, 1).AddDays(seed % 27);

        public Season Season()
        {
            var known = Enumerable.Range(1, weeks).Select(n => new WeekId($"w{n}")).ToList();
            var facts = FactSet.Empty
                .With(SeasonFacets.Frame.Of(default), new Frame(First, (DayOfWeek)(seed % 7), known.ToValueList(), [new WeekId("b1")], [new WeekId("a1"), new WeekId("a2")]))
                .With(SeasonFacets.Team.Of(default), new TeamCard(Text(), MaybeText(), "HV"));
            foreach (var week in known.Concat([new WeekId("b1"), new WeekId("a2")])) facts = Week(facts, week);
            for (var n = random.Next(seed % 5 == 0 ? 1 : 60); n > 0; n--) { var id = new MatchId(Id()); facts = facts.With(SeasonFacets.Match.Of(id), Match(id)); }
            for (var n = random.Next(20); n > 0; n--) { var id = new EventId(Id()); facts = facts.With(SeasonFacets.Event.Of(id), Event(id)); }
            for (var n = random.Next(9); n > 0; n--) { var id = new TestDayId(Id()); facts = facts.With(SeasonFacets.TestDay.Of(id), new TestDay(id, Day(), Text(), MaybeText(), MaybeText())); }
            for (var n = random.Next(9); n > 0; n--) { var id = new NoteId(Id()); facts = facts.With(SeasonFacets.Note.Of(id), new Note(id, Days(), Text())); }
            for (var n = 1; n < 4; n++) { var id = new GoalId(Id()); facts = facts.With(SeasonFacets.Goal.Of(id), new Goal(id, n, Text(), random.Next(3) == 0 ? null : 1.25m, 1e20m, random.Next(2) == 0 ? null : Day(), new QualityId("power"))); }
            foreach (var (form, place) in Enum.GetValues<TrackForm>().Select((form, place) => (form, place)))
                foreach (var grain in Enum.GetValues<TrackGrain>())
                {
                    var track = new Track(new($"t{place}.{grain}"), Text(), form, grain, null, MaybeText(), place);
                    facts = facts.With(SeasonFacets.Track.Of(track.Id), track);
                    for (var n = random.Next(12); n > 0; n--)
                        facts = facts.With(SeasonFacets.TrackCell.Of(new(track.Id, grain == TrackGrain.Week && weeks > 0 ? CellPlace.Of(known[random.Next(weeks)]) : CellPlace.Of(Day()))), form == TrackForm.Number && random.Next(4) > 0 ? "-12.5" : Text());
                }
            // A planner brought in whole: a track for every row of it, each with a sentence in the first weeks.
            for (var n = 0; seed % 20 == 0 && n < 40; n++)
            {
                var track = new Track(new($"row{n}"), $"Row {n}", TrackForm.Text, TrackGrain.Week, null, null, 100 + n);
                facts = facts.With(SeasonFacets.Track.Of(track.Id), track);
                foreach (var week in known.Take(2)) facts = facts.With(SeasonFacets.TrackCell.Of(new(track.Id, CellPlace.Of(week))), string.Concat(Enumerable.Repeat("what was said of it ", 6)));
            }
            facts = facts.With(SeasonFacets.Group.Of(new("g")), new GroupLine(new("g"), Text()));
            foreach (var phase in Enum.GetValues<PhaseKind>()) facts = facts.With(SeasonFacets.Phase.Of(new($"p{(int)phase}")), new Phase(phase, MaybeText()));
            foreach (var block in Enum.GetValues<BlockKind>()) facts = facts.With(SeasonFacets.Block.Of(new($"k{(int)block}")), new Block(block, MaybeText()));
            return new Season(new($"hostile-{seed}"), facts);
        }

        public Setup Setup()
        {
            var facts = FactSet.Empty
                .With(SetupFacets.Locale.Of(default), new LocaleSettings((DateOrder)(seed % 3), seed % 2 == 0, DayOfWeek.Sunday, (Paper)(seed % 2), MassUnit.Pound, Zone()))
                .With(SetupFacets.TeamName.Of(default), Text());
            for (var n = 0; n < seed % 12; n++) facts = facts.With(SetupFacets.Quality.Of(new($"q{n}")), new Quality(new($"q{n}"), Text(), QualityKind.Other, n));
            if (seed % 3 == 0) facts = facts.With(SetupFacets.ReferenceWeek.Of(default), new Load(3000));
            return new Setup(new("team"), facts);
        }

        private FactSet Week(FactSet facts, WeekId week)
        {
            if (random.Next(4) == 0) return facts;
            facts = facts.With(SeasonFacets.WeekPhase.Of(week), new PhaseId($"p{random.Next(7)}")).With(SeasonFacets.WeekBlock.Of(week), new BlockId($"k{random.Next(8)}"))
                .With(SeasonFacets.WeekKind.Of(week), (WeekKind)random.Next(11)).With(SeasonFacets.WeekLoad.Of(week), new Load(random.Next(Load.Most + 1)))
                .With(SeasonFacets.WeekPractices.Of(week), new Practices(random.Next(15), random.Next(2) == 0 ? null : new Minutes(random.Next(1441))));
            foreach (var quality in Quality.Defaults) facts = facts.With(SeasonFacets.WeekEmphasis.Of(new(week, quality.Id)), (Emphasis)random.Next(4));
            return random.Next(3) == 0 ? facts.With(SeasonFacets.WeekNote.Of(week), Text()) : facts;
        }

        private Match Match(MatchId id)
        {
            DateOnly? day = random.Next(9) == 0 ? null : Day();
            var status = (MatchStatus)random.Next(6);
            return new Match(id, day, status == MatchStatus.Window ? day?.AddDays(random.Next(9)) : null, random.Next(2) == 0 ? null : new TimeOnly(random.Next(24), random.Next(60), random.Next(60), 7),
                random.Next(2) == 0 ? null : Zone(), MaybeText(), random.Next(4) == 0 ? null : (Venue)random.Next(3), MaybeText(), MaybeText(), MaybeText(), (Importance)random.Next(3), status,
                random.Next(3) == 0 ? new Condition(null, Outcome.Won, MaybeText()) : null, random.Next(3) == 0 ? new Series(Text(), 2, 3) : null, MaybeText(), null, MaybeText(), random.Next(3) == 0 ? new MatchSource(Text(), random.Next(2) == 0) : null);
        }

        private Event Event(EventId id) => new(id, (EventKind)random.Next(8), Text(), Days(), MaybeText(), MaybeText(), random.Next(2) == 0 ? null : new Percent(random.Next(131)), random.Next(2) == 0, MaybeText(),
            random.Next(2) == 0 ? null : random.Next(20), random.Next(2) == 0 ? null : [Leg(), Leg()], MaybeText(), random.Next(2) == 0 ? null : new EventSource(Text(), Text(), random.Next(2) == 0));

        private Leg Leg() => new(Day(), MaybeText(), MaybeText(), random.Next(2) == 0 ? null : new TimeOnly(random.Next(24), 30), random.Next(2) == 0 ? null : new TimeOnly(random.Next(24), 15), random.Next(3) == 0 ? Day() : null, random.Next(2) == 0 ? null : -9.5m);

        private DateOnly Day() => First.AddDays(random.Next(-20, weeks * 7 + 20));

        private DaySpan Days()
        {
            var first = Day();
            return new(first, first.AddDays(random.Next(30)));
        }

        private string Text() => Texts[random.Next(Texts.Length)];

        private string? MaybeText() => random.Next(2) == 0 ? null : Text();

        private string Zone() => Zones[random.Next(Zones.Length)];

        private string Id() => $"i{++ids}";
    }
}
