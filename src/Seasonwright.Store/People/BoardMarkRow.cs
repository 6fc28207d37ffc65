using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>A tap at the board as the file has it; it goes with whom it is about and with its season.</summary>
/// <param name="Person">Null for what is about the whole room.</param>
/// <param name="Mark">The mark itself, as Wire writes it.</param>
/// <param name="Received">When it came in, which may be long after it was tapped.</param>
internal sealed record BoardMarkRow(ClubId Club, Guid Id, StreamId Season, string Session, string? Person, string Mark, DateTimeOffset Received);
