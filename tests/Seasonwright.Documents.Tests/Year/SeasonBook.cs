using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Tests.Year;

/// <summary>Writes a season by ordinary edits.</summary>
internal sealed class SeasonBook
{
    private int ids;

    public SeasonBook(int weeks, DateOnly? firstDay = null, DayOfWeek weekStart = DayOfWeek.Monday) => Write(new StartSeason(
        firstDay ?? new DateOnly(2027, 7, 5), weekStart, Enumerable.Range(1, weeks).Select(n => new WeekId($"w{n}")).ToValueList(),
        new TeamCard("Harbour Vale")));

    public Season Season { get; private set; } = Season.Empty(new("harbour-vale"));

    public string NextId() => $"x{++ids}";

    public WeekId Week(int number) => Season.Weeks[number - 1].Id;

    public DateOnly Day(int week, int day) => Season.Weeks[week - 1].Days.First.AddDays(day);

    /// <exception cref="InvalidOperationException">The edit was refused.</exception>
    public SeasonBook Write(params SeasonEdit[] edits)
    {
        foreach (var edit in edits)
        {
            Season = Decider.Decide(Season, edit) is Accepted accepted
                ? Season.With(accepted.Step)
                : throw new InvalidOperationException($"Refused: {edit}");
        }
        return this;
    }

    public SeasonBook Phase(int first, int last, PhaseKind kind, string? name = null) =>
        Write(new PaintPhase(Week(first), Week(last), new(NextId()), kind, new(NextId()), name));

    public SeasonBook Block(int first, int last, BlockKind kind, string? name = null) =>
        Write(new PaintBlock(Week(first), Week(last), new(NextId()), kind, new(NextId()), name));

    public SeasonBook Match(DateOnly day, string? opponent, Venue? venue = Venue.Home, MatchStatus status = MatchStatus.Confirmed,
        Importance importance = Importance.Regular, DateOnly? lastDay = null) =>
        Write(new SetMatch(new Match(new(NextId()), day, lastDay, Opponent: opponent, Venue: venue, Status: status, Importance: importance)));

    public SeasonBook Event(DateOnly first, DateOnly last, string title, EventKind kind = EventKind.Camp, bool provisional = false) =>
        Write(new SetEvent(new Event(new(NextId()), kind, title, new(first, last), Provisional: provisional)));
}
