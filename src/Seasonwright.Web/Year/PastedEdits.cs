using System.Text.Json.Nodes;

namespace Seasonwright.Web.Year;

/// <summary>What pasted cells come to, for the page's script.</summary>
/// <param name="Edits">In the form of docs/edits.md.</param>
/// <param name="Problem">Null where the edits can be sent.</param>
public sealed record PastedEdits(IReadOnlyList<JsonNode> Edits, string? Problem);
