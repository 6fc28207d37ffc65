using Seasonwright.Core.Edits;

namespace Seasonwright.Desk.Streams;

/// <summary>What one movement of the hand asks for: one or more edits that stand and fall together.</summary>
/// <param name="Id">Made where the hand moved. Sent again, it gets the first answer.</param>
/// <param name="BasedOn">The log number of the state the person saw.</param>
public sealed record Gesture(Guid Id, long BasedOn, IReadOnlyList<Edit> Edits);
