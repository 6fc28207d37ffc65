using System.Text.Json;

namespace Seasonwright.Web.Gestures;

/// <summary>A gesture as a page sends it.</summary>
/// <param name="Id">Made when the hand moved; sent again after a lost answer, it gets the first one.</param>
/// <param name="BasedOn">The log number the page showed.</param>
/// <param name="Knows">Own gestures on their way before this one.</param>
/// <param name="On">"season" or "team".</param>
/// <param name="Act">"edit", "undo" or "redo".</param>
/// <param name="Edits">For "edit": the edits, in the form of docs/edits.md.</param>
public sealed record GestureRequest(Guid Id, long BasedOn, IReadOnlyList<Guid>? Knows, string On, string Act, JsonElement Edits);

/// <summary>What became of it.</summary>
/// <param name="Kept">The log number it has; it is on the disk.</param>
/// <param name="Refused">Why it was not done; it will not be done when sent again.</param>
/// <param name="Told">What an undo took back, or a redo brought back, in words.</param>
/// <param name="Trouble">Why it could not be kept now; it may be sent again.</param>
public sealed record GestureAnswer(long? Kept = null, IReadOnlyList<string>? Refused = null, string? Trouble = null, string? Told = null);
