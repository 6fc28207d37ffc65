namespace Seasonwright.Documents.Read;

/// <summary>One field of a match, event or test day before and after, as texts; empty for not known.</summary>
/// <param name="Field">As the wire calls it: day, kickOff, training ...</param>
public sealed record FieldChange(string Field, string Before, string After);
