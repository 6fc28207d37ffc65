namespace Seasonwright.Store.Log;

/// <summary>One decided edit on its way into the log; see <see cref="LogEntry"/> for the parts.</summary>
public sealed record NewEntry(int WireVersion, string EditJson, string StepJson, string HashAfter);
