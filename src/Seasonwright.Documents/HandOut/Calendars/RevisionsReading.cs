using Seasonwright.Documents.Read;

namespace Seasonwright.Documents.HandOut.Calendars;

/// <summary>What came of reading a calendar that was handed out before: either the revisions that go on from it, or why not.</summary>
public sealed record RevisionsReading(CalendarRevisions? Revisions, Problem? Problem);
