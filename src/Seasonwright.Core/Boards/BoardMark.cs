using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Boards;

/// <summary>
/// One tap at the board of a session. Marks are rows and only ever added: of those about the same thing the last one holds, so that a board that was cut off sends
/// what it has whenever it can, in any order, and as often as it likes.
/// </summary>
/// <param name="Id">Made where it was tapped.</param>
/// <param name="At">When it was tapped, by the clock of the board.</param>
public abstract record BoardMark(Guid Id, DateTimeOffset At)
{
    /// <summary>Whom it is about; null for the whole room. It goes with the person.</summary>
    public virtual PersonId? About => null;

    /// <summary>What is impossible about it; none where it can be kept.</summary>
    public virtual IEnumerable<Refusal> Wrong => [];

    protected static IEnumerable<Refusal> Within(decimal? number, decimal least, decimal most, string field) =>
        number < least || number > most ? [Refusal.Say("workout-number", $"mark.{field}", number, least, most)] : [];
}

/// <summary>Who came, and how.</summary>
public sealed record CameMark(Guid Id, DateTimeOffset At, PersonId Person, Attendance How) : BoardMark(Id, At)
{
    public override PersonId? About => Person;
}

/// <summary>What became of a set.</summary>
/// <param name="Set">From 1 to <see cref="Prescription.MostSets"/>.</param>
/// <param name="Exercise">That was done.</param>
/// <param name="Weight">Lifted; null where none was told.</param>
/// <param name="Amount">Repetitions, seconds or metres done; null where nothing was.</param>
/// <param name="Left">Repetitions that were left, as the athlete says, 0 to <see cref="MostLeft"/>; null where nobody asked.</param>
/// <param name="IsByHand">The coach chose the weight: the sets after it keep it. Null for no.</param>
public sealed record SetMark(Guid Id, DateTimeOffset At, PersonId Person, WorkoutItemId Item, int Set, SetHow How, ExerciseId Exercise, Weight? Weight = null, int? Amount = null, int? Left = null, bool? IsByHand = null) : BoardMark(Id, At)
{
    /// <summary>More are hard to tell.</summary>
    public const int MostLeft = 6;

    public override PersonId? About => Person;

    public override IEnumerable<Refusal> Wrong =>
        [.. Within(Set, 1, Prescription.MostSets, "set"), .. Within(Amount, 0, Prescription.MostMetres, "amount"), .. Within(Left, 0, MostLeft, "left")];
}

/// <summary>Another exercise for somebody.</summary>
/// <param name="Exercise">Null for as it is written.</param>
public sealed record SwapMark(Guid Id, DateTimeOffset At, PersonId Person, WorkoutItemId Item, ExerciseId? Exercise) : BoardMark(Id, At)
{
    public override PersonId? About => Person;
}

/// <summary>A rack that cannot be used for now, or can again. The team's gym stays as it is.</summary>
public sealed record RackMark(Guid Id, DateTimeOffset At, string Rack, bool IsOut) : BoardMark(Id, At)
{
    public override IEnumerable<Refusal> Wrong => Rack.Length > SeasonDraft.LongestName ? [Refusal.Say("text-long", "mark.rack", "rack", Rack.Length, SeasonDraft.LongestName)] : [];
}

/// <summary>Where somebody lifts.</summary>
/// <param name="Rack">Null for elsewhere.</param>
/// <param name="Half">Of the squad; null where it is not parted.</param>
public sealed record StandMark(Guid Id, DateTimeOffset At, PersonId Person, string? Rack, SquadHalf? Half = null) : BoardMark(Id, At)
{
    public override PersonId? About => Person;

    public override IEnumerable<Refusal> Wrong => Rack?.Length > SeasonDraft.LongestName ? [Refusal.Say("text-long", "mark.rack", "rack", Rack.Length, SeasonDraft.LongestName)] : [];
}

/// <summary>How the room is shared.</summary>
/// <param name="Turns">As they stood when it was taken, so that they stay whoever comes and goes; null for none.</param>
public sealed record WayMark(Guid Id, DateTimeOffset At, FloorWayKind Way, ValueList<FloorTurn>? Turns = null) : BoardMark(Id, At);

/// <summary>The clock of the session runs, or does not.</summary>
/// <param name="Since">From when, by the clock of the board; null for from the tap on.</param>
public sealed record StartMark(Guid Id, DateTimeOffset At, bool IsRunning, DateTimeOffset? Since = null) : BoardMark(Id, At);

/// <summary>What the board knows of somebody's coming.</summary>
public enum Attendance
{
    /// <summary>Nobody said yet.</summary>
    Expected,
    Here,
    Late,

    /// <summary>Here, and something is otherwise today; the board does not ask what.</summary>
    Modified,
    Away,
}

/// <summary>What became of a set.</summary>
public enum SetHow
{
    /// <summary>Not done yet, or taken back.</summary>
    Open,
    AsWritten,
    Otherwise,
    NotDone,
}

/// <summary>A half of a squad that is parted.</summary>
public enum SquadHalf
{
    A,
    B,
}
