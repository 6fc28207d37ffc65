using Seasonwright.Core.Edits;

namespace Seasonwright.Desk.Streams;

/// <summary>What one movement of the hand asks for: one or more edits that stand and fall together.</summary>
/// <param name="Id">Made where the hand moved. Sent again, it gets the first answer.</param>
/// <param name="BasedOn">The log number of the state the person saw.</param>
/// <param name="Edits">One or more.</param>
public sealed record Gesture(Guid Id, long BasedOn, IReadOnlyList<Edit> Edits)
{
    /// <summary>Gestures of the same hand that were on their way when this one was made: it stands on them, so they are no conflict.</summary>
    public IReadOnlySet<Guid> Knows { get; init; } = new HashSet<Guid>();
}
