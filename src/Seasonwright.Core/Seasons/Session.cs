using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>A session of training on a day: a practice of the head coach's, or one of ours.</summary>
/// <param name="Minutes">5 to 480.</param>
/// <param name="Rpe">Intended effort.</param>
/// <param name="Name">In the coach's words; null for the kind's own. No health details belong here.</param>
/// <param name="Start">On the venue's clock; null where only the slot is known.</param>
/// <param name="Groups">Whom it is for; null for everyone.</param>
/// <param name="Doses">What it gives which quality, one dose each; null where nobody said: its kind's qualities then count.</param>
/// <param name="Waves">Parts of the squad with a start of their own.</param>
/// <param name="IsLocked">A proposal leaves it as it is.</param>
/// <param name="IsCancelled">It was planned and does not take place.</param>
/// <param name="Workout">What is done in it; null where nobody wrote it down.</param>
/// <param name="Room">The facility of the club that it is in; null where nobody said.</param>
public sealed record Session(
    SessionId Id,
    DateOnly Day,
    DaySlot Slot,
    SessionKind Kind,
    Minutes Minutes,
    Rpe Rpe,
    string? Name = null,
    TimeOnly? Start = null,
    string? Place = null,
    ValueList<GroupId>? Groups = null,
    ValueList<Dose>? Doses = null,
    ValueList<Wave>? Waves = null,
    bool IsLocked = false,
    bool IsCancelled = false,
    WorkoutId? Workout = null,
    RoomId? Room = null)
{
    /// <summary>So many of one owner's sessions can one athlete have on a day.</summary>
    public const int MostADay = 3;

    public const int LeastMinutes = 5, MostMinutes = 480, MostDoses = 10, MostWaves = 6, MostGroups = 20;

    /// <summary>Minutes x RPE; 0 where it is cancelled.</summary>
    public Load Load => IsCancelled ? Load.Zero : Load.Of(Minutes, Rpe);

    /// <summary>Not a practice of the head coach's.</summary>
    public bool IsOurs => Kind != SessionKind.Practice;

    /// <summary>In the coach's words, else its kind's: "Practice".</summary>
    public string Title => Name ?? Sentences.Say($"session.{Kind}");

    /// <summary>When it begins as far as that is known.</summary>
    public TimeOnly Begins => Start ?? Slot.UsualStart();

    /// <summary>The same session elsewhere; in another part of the day its time is no longer known.</summary>
    public Session MovedTo(DateOnly day, DaySlot slot) => this with { Day = day, Slot = slot, Start = slot == Slot ? Start : null };

    /// <summary>Whether somebody would have to be in both at one time. Without a known start nobody can tell.</summary>
    public bool Meets(Session other) => !IsCancelled && !other.IsCancelled && Day == other.Day && Start is { } mine && other.Start is { } its
        && mine.ToTimeSpan() < its.ToTimeSpan() + TimeSpan.FromMinutes(other.Minutes.Value) && its.ToTimeSpan() < mine.ToTimeSpan() + TimeSpan.FromMinutes(Minutes.Value)
        && (Groups is not { } groups || other.Groups is not { } others || groups.Any(others.Contains));

    /// <summary>Whether it is for everyone or for this group among others.</summary>
    public bool IsFor(GroupId group) => Groups is null || Groups.Contains(group);
}
