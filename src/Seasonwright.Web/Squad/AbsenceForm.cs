using System.Collections.Immutable;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Squad;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Squad;

/// <summary>An absence as typed.</summary>
/// <param name="Last">"" for one day.</param>
/// <param name="Load">As <see cref="OutsideText"/> reads it; "" where it is not known.</param>
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
        var isSpan = !wrong.ContainsKey("first") && !wrong.ContainsKey("last");
        if (OutsideText.Read(Load, isSpan ? Days : null).Wrong is { } unread) wrong["load"] = unread.Sentence;
        return wrong.ToImmutable();
    }

    /// <summary>The days; ask <see cref="Problems"/> first.</summary>
    public DaySpan Days => new(StartForm.DayOf(First)!.Value, StartForm.DayOf(Last) ?? StartForm.DayOf(First)!.Value);

    /// <summary>The load as read; ask <see cref="Problems"/> first.</summary>
    public OutsideLoads Loads => OutsideText.Read(Load, Days).Loads;
}
