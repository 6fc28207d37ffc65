using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Squad;

/// <summary>A running test as typed.</summary>
/// <param name="Time">"6:15", or whole minutes.</param>
internal sealed record RunForm(string Day, string Metres, string Time)
{
    public static RunForm Read(Posted posted) => new(posted["run-day"], posted["run-metres"], posted["run-time"]);

    /// <summary>What cannot be read, by field; what cannot be is the desk's to say.</summary>
    public ImmutableSortedDictionary<string, string> Problems()
    {
        var wrong = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        if (StartForm.DayOf(Day) is null) wrong["run-day"] = Words.Say(Day.Length == 0 ? "new.day-missing" : "new.day-unread", Day);
        if (Whole is null) wrong["run-metres"] = Words.Say("strength.whole-unread", Metres);
        if (Seconds is null) wrong["run-time"] = Words.Say("runs.time-unread", Time);
        return wrong.ToImmutable();
    }

    public int? Whole => Number(Metres);

    /// <summary>Null where the text is no time.</summary>
    public int? Seconds => Time.Split(':') switch
    {
        [var minutes] => Number(minutes) * 60,
        [var minutes, { Length: 2 } seconds] when Number(seconds) is < 60 and var rest => Number(minutes) * 60 + rest,
        _ => null,
    };

    private static int? Number(string text) => text.Length <= 6 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
