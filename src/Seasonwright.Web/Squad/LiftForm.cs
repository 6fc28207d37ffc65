using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Squad;
using Seasonwright.Documents;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Squad;

/// <summary>A tested set as typed.</summary>
/// <param name="Exercise">The name of one.</param>
/// <param name="Velocity">"" where none was measured.</param>
internal sealed record LiftForm(string Exercise, string Day, string Weight, string Unit, string Repetitions, string Velocity)
{
    public static LiftForm Offered(DateOnly today, LocaleSettings locale) => new("", today.Iso(), "", locale.MassUnit.ToString(), "", "");

    public static LiftForm Read(Posted posted) => new(posted["exercise"], posted["day"], posted["weight"], posted["unit"], posted["repetitions"], posted["velocity"]);

    /// <summary>What cannot be read, by field; what cannot be is the desk's to say.</summary>
    public ImmutableSortedDictionary<string, string> Problems()
    {
        var wrong = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        if (StartForm.DayOf(Day) is null) wrong["day"] = Words.Say(Day.Length == 0 ? "new.day-missing" : "new.day-unread", Day);
        if (Number(Weight) is null) wrong["weight"] = Words.Say("strength.number-unread", Weight);
        if (Repetitions.Length > 0 && Whole is null) wrong["repetitions"] = Words.Say("strength.whole-unread", Repetitions);
        if (Velocity.Length > 0 && Number(Velocity) is null) wrong["velocity"] = Words.Say("strength.number-unread", Velocity);
        return wrong.ToImmutable();
    }

    /// <summary>The set; ask <see cref="Problems"/> first.</summary>
    public LiftDraft Draft(Setup setup) => new(
        setup.Exercises.FirstOrDefault(exercise => exercise.HasMax && string.Equals(exercise.Name, Exercise, StringComparison.OrdinalIgnoreCase))?.Id,
        StartForm.DayOf(Day)!.Value, Number(Weight)!.Value, Enum.TryParse<MassUnit>(Unit, out var unit) && Enum.IsDefined(unit) ? unit : setup.Locale.MassUnit, Whole, Number(Velocity));

    private int? Whole => int.TryParse(Repetitions, NumberStyles.None, CultureInfo.InvariantCulture, out var whole) ? whole : null;

    // Seven digits and three more: what is beyond weighs nothing.
    private static decimal? Number(string text) => decimal.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number < 10_000_000 && decimal.IsInteger(number * 1_000) ? number : null;
}
