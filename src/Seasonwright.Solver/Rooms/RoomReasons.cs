using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What is told of one session of a room's week.</summary>
/// <param name="Sentence">All of it in one sentence, with the names of team and session.</param>
/// <param name="Reasons">Each reason with the rule it rests on.</param>
public sealed record RoomReasons(SessionId Session, string Sentence, ValueList<WeekReason> Reasons);
