using Seasonwright.Core.Edits;
using Seasonwright.Wire;

namespace Seasonwright.Desk.Streams;

/// <summary>Edits as pages send them: the same JSON as the log, the command line and docs/edits.md.</summary>
public static class GestureText
{
    /// <summary>Reads a list of edits.</summary>
    /// <param name="json">A JSON array of edits.</param>
    /// <param name="problem">Which field does not hold what it must; null when the text was read.</param>
    public static IReadOnlyList<Edit>? TryRead(string json, out UnreadField? problem)
    {
        var edits = EditLines.ReadList(json, out var wrong);
        problem = wrong is null ? null : new UnreadField(wrong.Field, wrong.IsMissing ? null : wrong.Finding);
        return edits;
    }

    /// <summary>An edit in the same form, for a page that lets a person change part of it.</summary>
    public static string Of(Edit edit) => LogText.Of(edit);
}

/// <summary>A field of a page's form that cannot be read: a person typed there, so neither lines nor files are spoken of.</summary>
/// <param name="Path">The field's place in its edit, for instance "match.kickOff"; null where the whole text is no list of edits.</param>
/// <param name="Finding">What is wrong with what was typed; null where nothing was.</param>
public sealed record UnreadField(string? Path, string? Finding);
