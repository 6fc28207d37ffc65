using Seasonwright.Core;

namespace Seasonwright.Documents.HandOut.Home;

/// <summary>A home programme as one player holds it.</summary>
/// <param name="Number">On the shirt; empty where there is none.</param>
/// <param name="AsksFirst">No work is told: a clinician is asked first.</param>
/// <param name="IsModified">Something is otherwise than for the others. No page says why.</param>
/// <param name="IsMinor">A letter to the guardian follows.</param>
/// <param name="Notes">What the player has to know first.</param>
/// <param name="Weeks">Weeks down, days across; none for who asks first.</param>
/// <param name="Parts">What is done on those days, in the order of the weekdays.</param>
public sealed record HomeSheet(string Number, string Name, bool AsksFirst, bool IsModified, bool IsMinor, ValueList<string> Notes, ValueList<HomeWeekRow> Weeks, ValueList<HomePart> Parts);

/// <summary>A week of it.</summary>
/// <param name="Name">"Week 1".</param>
/// <param name="Days">Seven.</param>
public sealed record HomeWeekRow(string Name, ValueList<HomeCell> Days);

/// <summary>A day of it.</summary>
/// <param name="Day">"Mon 20 Dec".</param>
/// <param name="Does">What is done, or that it is free.</param>
/// <param name="IsFree">Nothing is to be ticked off.</param>
public sealed record HomeCell(string Day, ValueList<string> Does, bool IsFree);

/// <summary>What is done on one weekday, or on several alike.</summary>
/// <param name="Title">"Mon, Fri: Lower body".</param>
/// <param name="Note">Of the coach; empty for none.</param>
public sealed record HomePart(string Title, string Note, ValueList<HomeRow> Rows);

/// <summary>One exercise or run of it.</summary>
/// <param name="Place">"A1"; empty for what gets ready and for a run.</param>
/// <param name="How">Tempo, rest, note; empty for none.</param>
/// <param name="Weeks">What is done in each week; one for all where it is always the same.</param>
public sealed record HomeRow(string Place, string Name, string How, ValueList<string> Weeks);
