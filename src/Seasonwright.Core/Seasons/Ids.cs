using System.Buffers;
using Seasonwright.Core.Facts;

namespace Seasonwright.Core.Seasons;

// The ids of the house, one family: opaque texts that an edit brings. Core never makes one.

/// <summary>What every id's text must be: 1 to 64 of the letters a-z, A-Z, digits, '.', '_' and '-'.</summary>
public static class IdText
{
    public const int Longest = 64;

    private static readonly SearchValues<char> Letters = SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789._-");

    public static bool IsId(string? text) => text is not null && IsId(text.AsSpan());

    public static bool IsId(ReadOnlySpan<char> text) => text.Length is > 0 and <= Longest && !text.ContainsAnyExcept(Letters);

    internal static string Check(string? text) =>
        IsId(text) ? text! : throw new FormatException($"'{text}' is no id: 1 to {Longest} letters, digits, '.', '_' or '-' are.");
}

/// <summary>A season: one stream of the log.</summary>
public readonly record struct SeasonId(string Text) : ISubject<SeasonId>
{
    public string Text { get; } = IdText.Check(Text);

    public static SeasonId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A team: its setup is one stream of the log.</summary>
public readonly record struct TeamId(string Text) : ISubject<TeamId>
{
    public string Text { get; } = IdText.Check(Text);

    public static TeamId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A week of a season; it keeps its id whatever its date.</summary>
public readonly record struct WeekId(string Text) : ISubject<WeekId>
{
    public string Text { get; } = IdText.Check(Text);

    public static WeekId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A phase of a season.</summary>
public readonly record struct PhaseId(string Text) : ISubject<PhaseId>
{
    public string Text { get; } = IdText.Check(Text);

    public static PhaseId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A block (mesocycle) of a season.</summary>
public readonly record struct BlockId(string Text) : ISubject<BlockId>
{
    public string Text { get; } = IdText.Check(Text);

    public static BlockId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A match.</summary>
public readonly record struct MatchId(string Text) : ISubject<MatchId>
{
    public string Text { get; } = IdText.Check(Text);

    public static MatchId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>An event.</summary>
public readonly record struct EventId(string Text) : ISubject<EventId>
{
    public string Text { get; } = IdText.Check(Text);

    public static EventId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A test day.</summary>
public readonly record struct TestDayId(string Text) : ISubject<TestDayId>
{
    public string Text { get; } = IdText.Check(Text);

    public static TestDayId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A session of training on a day.</summary>
public readonly record struct SessionId(string Text) : ISubject<SessionId>
{
    public string Text { get; } = IdText.Check(Text);

    public static SessionId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A typical week of a team.</summary>
public readonly record struct TypicalWeekId(string Text) : ISubject<TypicalWeekId>
{
    public string Text { get; } = IdText.Check(Text);

    public static TypicalWeekId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A note over days.</summary>
public readonly record struct NoteId(string Text) : ISubject<NoteId>
{
    public string Text { get; } = IdText.Check(Text);

    public static NoteId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A track of the coach's own.</summary>
public readonly record struct TrackId(string Text) : ISubject<TrackId>
{
    public string Text { get; } = IdText.Check(Text);

    public static TrackId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A goal of the season.</summary>
public readonly record struct GoalId(string Text) : ISubject<GoalId>
{
    public string Text { get; } = IdText.Check(Text);

    public static GoalId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A group line.</summary>
public readonly record struct GroupId(string Text) : ISubject<GroupId>
{
    public string Text { get; } = IdText.Check(Text);

    public static GroupId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A person; names are rows outside the log.</summary>
public readonly record struct PersonId(string Text) : ISubject<PersonId>
{
    public string Text { get; } = IdText.Check(Text);

    public static PersonId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A physical quality the team plans.</summary>
public readonly record struct QualityId(string Text) : ISubject<QualityId>
{
    public string Text { get; } = IdText.Check(Text);

    public static QualityId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>An exercise: of the book every team starts with, or a team's own.</summary>
public readonly record struct ExerciseId(string Text) : ISubject<ExerciseId>
{
    public string Text { get; } = IdText.Check(Text);

    public static ExerciseId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A workout: what is done in a session of the gym, built once.</summary>
public readonly record struct WorkoutId(string Text) : ISubject<WorkoutId>
{
    public string Text { get; } = IdText.Check(Text);

    public static WorkoutId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>One exercise of a workout; it keeps its id wherever it is moved to.</summary>
public readonly record struct WorkoutItemId(string Text) : ISubject<WorkoutItemId>
{
    public string Text { get; } = IdText.Check(Text);

    public static WorkoutItemId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A programme for training at home.</summary>
public readonly record struct HomeProgrammeId(string Text) : ISubject<HomeProgrammeId>
{
    public string Text { get; } = IdText.Check(Text);

    public static HomeProgrammeId Parse(string text) => new(text);

    public override string ToString() => Text;
}

/// <summary>A room that teams train in.</summary>
public readonly record struct RoomId(string Text) : ISubject<RoomId>
{
    public string Text { get; } = IdText.Check(Text);

    public static RoomId Parse(string text) => new(text);

    public override string ToString() => Text;
}
