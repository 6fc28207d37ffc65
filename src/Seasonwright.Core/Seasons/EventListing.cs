using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>What a list last said of an event or test day that now stands otherwise. The next state of the list is compared with it, so that only what the list says anew changes the entry.</summary>
/// <param name="Days">One day for a test day.</param>
/// <param name="Kind">Null for test days, of which a list says no more than days, part and whom.</param>
/// <param name="Training">0 to 130 per cent.</param>
public sealed record EventListing(
    DaySpan Days,
    EventKind? Kind = null,
    string? Part = null,
    string? For = null,
    Percent? Training = null,
    bool Provisional = false,
    string? Place = null,
    ValueList<Leg>? Legs = null,
    string? Note = null)
{
    internal static EventListing Of(Event item) => new(item.Days, item.Kind, item.Part, item.For, item.Training, item.Provisional, item.Place, item.Legs, item.Note);

    internal static EventListing Of(TestDay test) => new(DaySpan.Of(test.Day), Part: test.Part, For: test.For);

    /// <summary>The event with what was said of it.</summary>
    internal Event On(Event item) => item with
    {
        Days = Days,
        Kind = Kind ?? item.Kind,
        Part = Part,
        For = For,
        Training = Training,
        Provisional = Provisional,
        Place = Place,
        Legs = Legs,
        Note = Note,
    };

    /// <summary>The test day with what was said of it.</summary>
    internal TestDay On(TestDay test) => test with { Day = Days.First, Part = Part, For = For };
}
