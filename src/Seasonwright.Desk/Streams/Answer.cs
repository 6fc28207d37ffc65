using Seasonwright.Core;
using Seasonwright.Core.Edits;

namespace Seasonwright.Desk.Streams;

/// <summary>What became of a gesture.</summary>
public abstract record Answer
{
    private protected Answer() { }
}

/// <summary>Acknowledged: it is on the disk and will outlive the power.</summary>
/// <param name="Number">The log number after it.</param>
public sealed record Kept(long Number) : Answer;

/// <summary>Not done, and nothing changed: the edit does not hold, or somebody changed the same thing meanwhile.</summary>
public sealed record NotDone(ValueList<Refusal> Reasons) : Answer
{
    public NotDone(Refusal reason)
        : this(new ValueList<Refusal>([reason])) { }
}

/// <summary>Not done because the disk or the file refuses. What was asked may be sent again.</summary>
/// <param name="Sentence">What happened, where, and how to mend it.</param>
public sealed record CannotKeep(string Sentence) : Answer;
