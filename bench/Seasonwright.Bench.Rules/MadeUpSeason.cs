using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Bench.Rules;

/// <summary>53 weeks with everything a plan can hold: a practice and a session of ours every day, all qualities every week, a match or two a week, tests, journeys.</summary>
internal static class MadeUpSeason
{
    private static readonly DateOnly First = new(2027, 6, 28);

    public static Season Make()
    {
        List<SeasonEdit> edits = [new StartSeason(First, DayOfWeek.Monday, new(Enumerable.Range(1, 53).Select(Week)), new TeamCard("Harbour Vale"))];
        Phase(1, 6, PhaseKind.GeneralPreparation);
        Phase(7, 9, PhaseKind.SpecificPreparation);
        Phase(10, 12, PhaseKind.PreCompetition);
        Phase(13, 47, PhaseKind.Competition);
        Phase(48, 53, PhaseKind.Transition);
        for (var number = 1; number <= 53; number++)
        {
            var week = Week(number);
            var kind = number >= 48 ? WeekKind.Transition : number % 4 == 0 ? WeekKind.Unloading : number is >= 13 and <= 47 ? number % 3 == 0 ? WeekKind.Congested : WeekKind.Competition : WeekKind.Building;
            edits.Add(new SetWeekKind(week, week, kind));
            edits.Add(new SetWeekLoad(week, week, new Load(1800 + number * 131 % 1400)));
            edits.Add(new SetPractices(week, week, new Practices(7, new Minutes(80), new Rpe(5m))));
            foreach (var quality in Quality.Defaults) edits.Add(new SetEmphasis(week, week, quality.Id, (Emphasis)((number + quality.Place) % 4)));
            if (number is >= 10 and <= 47) edits.Add(Match(number, 5, number % 11 == 0));
            if (number is >= 13 and <= 47 && number % 3 == 0) edits.Add(Match(number, 2, false));
            for (var day = 0; day < 7; day++)
            {
                edits.Add(Session(number, day, DaySlot.Evening, SessionKind.Practice));
                edits.Add(Session(number, day, DaySlot.Morning, (SessionKind)(1 + (5 * number + 3 * day) % 12)));
            }
            if (number % 4 == 1) edits.Add(new SetTestDay(new TestDay(new($"t{number}"), Day(number, 1), "Strength, sprint, intermittent running")));
            if (number % 9 == 0) edits.Add(new SetEvent(new Event(new($"e{number}"), EventKind.Travel, "Away", new DaySpan(Day(number, 3), Day(number, 6)), Legs: new([new Leg(Day(number, 3), Departs: new(8, 0), Arrives: new(23, 0), ZoneShift: 4), new Leg(Day(number, 6), ZoneShift: -4)]))));
        }
        return edits.Aggregate(Season.Empty(new("bench")), Done);

        void Phase(int first, int last, PhaseKind kind) => edits.Add(new PaintPhase(Week(first), Week(last), new($"p{first}"), kind, new($"r{first}")));
    }

    /// <summary>The season after one more drag of one week's load, as painting makes it.</summary>
    public static Season Dragged(Season season, int round) => Done(season, new SetWeekLoad(Week(1 + round % 53), Week(1 + round % 53), new Load(1500 + round % 997)));

    private static Season Done(Season season, SeasonEdit edit) => Decider.Decide(season, edit) is Accepted accepted ? season.With(accepted.Step) : throw new InvalidOperationException($"{edit} was refused.");

    private static SetMatch Match(int week, int day, bool isKey) => new(new Match(new($"m{week}.{day}"), Day(week, day), KickOff: new(18, 30), Zone: "Europe/Copenhagen", Importance: isKey ? Importance.Key : Importance.Regular));

    private static SetSession Session(int week, int day, DaySlot slot, SessionKind kind)
    {
        var usual = SessionUse.Of(kind);
        return new(new Session(new($"s{week}.{day}.{slot}"), Day(week, day), slot, kind, usual.Minutes, usual.Rpe, Doses: kind == SessionKind.Power ? new([new Dose(new("power"), Contacts: 80 + 10 * day)]) : null));
    }

    private static WeekId Week(int number) => new($"w{number}");

    private static DateOnly Day(int week, int day) => First.AddDays(7 * (week - 1) + day);
}
