namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>
/// Numbers of days as spreadsheets count them (ISO/IEC 29500-1, 18.17.4.1): from 1900 day 1 is 1 January and a day 60 is counted that
/// never was (29 February 1900); from 1904 day 0 is 1 January.
/// </summary>
internal static class DaySerial
{
    // 31 December 9999 counted from 1900.
    private const double LastDay = 2_958_466;

    /// <summary>Rounded to the second; null before the first day, on the day that never was, and after 9999.</summary>
    public static DateTime? Read(double number, bool from1904)
    {
        if (double.IsNaN(number) || number < 0 || number >= LastDay) return null;
        var days = (int)Math.Floor(number);
        if (!from1904 && days is 0 or 60) return null;
        var start = from1904 ? new DateTime(1904, 1, 1) : days < 60 ? new DateTime(1899, 12, 31) : new DateTime(1899, 12, 30);
        if (days > (DateTime.MaxValue - start).Days) return null;
        var seconds = Math.Round((number - days) * 86400, MidpointRounding.AwayFromZero);
        var day = start.AddDays(days);
        return DateTime.MaxValue - day < TimeSpan.FromSeconds(seconds) ? null : day.AddSeconds(seconds);
    }
}
