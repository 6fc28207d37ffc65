using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Squad;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Squad;

/// <summary>An absence as typed.</summary>
/// <param name="Last">"" for one day.</param>
/// <param name="Load">On each day: "90 x 6" (minutes and RPE) or "540" (AU); "" where it is not known.</param>
internal sealed record AbsenceForm(string Kind, string First, string Last, string Load)
{
    public static AbsenceForm Empty { get; } = new("", "", "", "");

    public static AbsenceForm Read(Posted posted) => new(posted["kind"], posted["first"], posted["last"], posted["load"]);

    /// <summary>What is wrong, by field.</summary>
    public ImmutableSortedDictionary<string, string> Problems()
    {
        var wrong = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        if (!Enum.TryParse<AbsenceKind>(Kind, out var kind) || !Enum.IsDefined(kind)) wrong["kind"] = Words.Say("squad.kind-missing");
        if (StartForm.DayOf(First) is not { } first) wrong["first"] = Words.Say(First.Length == 0 ? "new.day-missing" : "new.day-unread", First);
        else if (Last.Length > 0 && StartForm.DayOf(Last) is { } last && last < first) wrong["last"] = Words.Say("squad.last-early");
        if (Last.Length > 0 && StartForm.DayOf(Last) is null) wrong["last"] = Words.Say("new.day-unread", Last);
        if (Load.Length > 0 && Outside is null) wrong["load"] = Words.Say("squad.load-wrong");
        return wrong.ToImmutable();
    }

    /// <summary>The days; ask <see cref="Problems"/> first.</summary>
    public DaySpan Days => new(StartForm.DayOf(First)!.Value, StartForm.DayOf(Last) ?? StartForm.DayOf(First)!.Value);

    public OutsideLoad? Outside
    {
        get
        {
            var parts = Load.Split(['x', 'X', '×', '*'], StringSplitOptions.TrimEntries);
            if (!int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var first)) return null;
            if (parts.Length == 1) return first <= Core.Quantities.Load.Most ? OutsideLoad.Of(new Load(first)) : null;
            return parts.Length == 2 && first <= 1440 && decimal.TryParse(parts[1].Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var rpe) && rpe <= 10 && rpe * 2 == decimal.Truncate(rpe * 2)
                ? OutsideLoad.Of(new Minutes(first), new Rpe(rpe)) : null;
        }
    }
}
