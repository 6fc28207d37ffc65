using Seasonwright.Core.Rooms;
using Seasonwright.Core.Rules;
using Seasonwright.Solver;

namespace Seasonwright.Cli;

/// <summary>A room's week as <c>room</c> tells it.</summary>
/// <param name="Fewest">No layout leaves fewer without a place.</param>
/// <param name="Cost">Half hours from the wishes; no layout with as many places costs less than <paramref name="Bound"/>.</param>
/// <param name="Unplaced">Sessions without a place.</param>
/// <param name="Moved">Sessions that are not where they were wished.</param>
/// <param name="TooSmall">Half hours in which the room is too small for all.</param>
/// <param name="Clashes">What locked sessions clash with.</param>
internal sealed record RoomReport(
    DateOnly First, int Asked, int Placed, int Fewest, bool IsFewest, long Cost, long Bound, bool IsProven,
    IReadOnlyList<RoomRow> Sessions, IReadOnlyList<RoomReport.Told> Unplaced, IReadOnlyList<RoomReport.Told> Moved, IReadOnlyList<string> TooSmall, IReadOnlyList<string> Clashes)
{
    public static RoomReport Of(RoomProposal proposal) => new(
        proposal.Week.First, proposal.Week.Asks.Count(), proposal.Week.Placed.Count(), proposal.Fewest, proposal.IsFewest, proposal.Cost, proposal.Bound, proposal.IsProven,
        RoomRow.Of(proposal.Week), [.. proposal.Unplaced.Select(Told.Of)], [.. proposal.Moved.Select(Told.Of)], proposal.Binding, [.. RoomClash.Of(proposal.Week).Select(clash => clash.Sentence)]);

    /// <summary>For people: a table of the days, then what is left out, what clashes, and what is not where it was wished.</summary>
    public void Write(Room room, Terminal terminal)
    {
        RoomRow.Table(Sessions, room).Write(Sessions, terminal.Out);
        foreach (var sentence in Unplaced.Select(one => one.Sentence).Concat(TooSmall).Concat(Clashes).Concat(Moved.Select(one => one.Sentence))) terminal.Out.WriteLine(OneLine.Of(sentence));
        if (Sessions.MaxBy(row => row.Athletes) is { } largest) terminal.Tell("room.supervision", largest.Athletes, $"{largest.Team}, {largest.Name}", Usual("ratio.adult"), Usual("ratio.school"), Usual("ratio.under_14"));
    }

    /// <summary>How far it is from the best.</summary>
    public string Proof() => !IsFewest ? Texts.Say("room.open", Fewest) : !IsProven ? Texts.Say("room.open-wishes", Cost - Bound) : Texts.Say("room.proven");

    /// <summary>The usual number of athletes for a coach, as the rulebook has it.</summary>
    private static string Usual(string figure) => Rulebook.All.First(rule => rule.Id == "supervision-ratio").Figures.First(one => one.Name == figure).Default;

    internal sealed record Told(string Session, string Sentence, IReadOnlyList<Reason> Reasons)
    {
        public static Told Of(RoomReasons told) => new(told.Session.Text, told.Sentence, [.. told.Reasons.Select(reason => new Reason(reason.Sentence, reason.Rule.Length > 0 ? reason.Rule : null))]);
    }

    internal sealed record Reason(string Sentence, string? Rule);
}
