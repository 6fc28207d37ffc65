namespace Seasonwright.Core.Seasons;

/// <summary>A day on which the squad, or part of it, is tested.</summary>
/// <param name="Battery">What is tested, in the coach's words.</param>
/// <param name="Part">Part of the day, in words; null for the whole day.</param>
/// <param name="For">Whom; null for everyone.</param>
/// <param name="Source">The list it came from; null for one entered by hand.</param>
public sealed record TestDay(TestDayId Id, DateOnly Day, string Battery, string? Part = null, string? For = null, EventSource? Source = null)
{
    /// <summary>The test day as its list last had it; as it stands where no list has it otherwise.</summary>
    public TestDay AsListed() => Source is { Listed: { } listed } source ? listed.On(this) with { Source = source with { Listed = null } } : this;

    /// <summary>This test day, which remembers how a list has it wherever it stands otherwise.</summary>
    /// <param name="listed">The test day as the list has it, with its source.</param>
    public TestDay ListedAs(TestDay listed) => this with { Source = (Source ?? listed.Source)?.Saying(EventListing.Of(listed), EventListing.Of(this)) };
}
