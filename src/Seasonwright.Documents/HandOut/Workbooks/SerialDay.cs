namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Days as spreadsheets count them: 1 is the first of January 1900.</summary>
internal static class SerialDay
{
    // Spreadsheets do not agree on the days before: some of them count a 29 February 1900, which never was.
    private static readonly DateOnly First = new(1900, 3, 1);

    private const int NumberOfFirst = 61;

    /// <summary>Null for a day that not every spreadsheet counts alike.</summary>
    public static int? Of(DateOnly day) => day < First ? null : day.DayNumber - First.DayNumber + NumberOfFirst;
}
