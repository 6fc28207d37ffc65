using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>A running test as the file has it; it goes with its athlete.</summary>
internal sealed record RunTestRow(ClubId Club, Guid Id, string Person, DateOnly Day, int Metres, int Seconds, DateTimeOffset Recorded)
{
    public static RunTestRow Of(ClubId club, RunTest test) => new(club, test.Id, test.Person.Text, test.Day, test.Metres, test.Seconds, test.Recorded);

    /// <exception cref="FormatException">A value we never wrote.</exception>
    public RunTest Value => RunTest.IsSpeed(Metres, Seconds) ? new(Id, new PersonId(Person), Day, Metres, Seconds, Recorded) : throw new FormatException($"The running test {Id} cannot be.");
}
