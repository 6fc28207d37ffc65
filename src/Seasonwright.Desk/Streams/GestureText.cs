using Seasonwright.Core.Edits;
using Seasonwright.Wire;

namespace Seasonwright.Desk.Streams;

/// <summary>Edits as pages send them: the same JSON as the log, the command line and docs/edits.md.</summary>
public static class GestureText
{
    /// <summary>Reads a list of edits.</summary>
    /// <param name="json">A JSON array of edits.</param>
    /// <param name="problem">What is wrong with the text and how to mend it; null when it was read.</param>
    public static IReadOnlyList<Edit>? TryRead(string json, out string? problem)
    {
        var edits = EditLines.ReadList(json, out var wrong);
        problem = wrong?.ToString();
        return edits;
    }

    /// <summary>An edit in the same form, for a page that lets a person change part of it.</summary>
    public static string Of(Edit edit) => LogText.Of(edit);
}
