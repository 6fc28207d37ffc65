using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>Who a person id stands for. A row, never in the log, so that it can be erased.</summary>
/// <param name="Id">What the log knows the person by.</param>
/// <param name="Created">UTC.</param>
/// <param name="IsLocal">The person who sits at this machine; one per club.</param>
public sealed record Person(ClubId Club, string Id, string DisplayName, DateTimeOffset Created, bool IsLocal);
