using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>A person's body mass on a day. A correction is a newer row for the same day.</summary>
/// <param name="Id">Brought by whoever records it, so that what is sent twice is one weighing.</param>
/// <param name="Recorded">When it was written down.</param>
public sealed record WeighIn(Guid Id, PersonId Person, DateOnly Day, BodyMass Mass, DateTimeOffset Recorded)
{
    /// <summary>The mass that holds on a day: of the last day weighed until then, what was written down last.</summary>
    /// <param name="all">Of one person, in any order.</param>
    /// <returns>Null where the person was not weighed until then.</returns>
    public static WeighIn? LastOn(IEnumerable<WeighIn> all, DateOnly day) =>
        all.Where(one => one.Day <= day).OrderByDescending(one => one.Day).ThenByDescending(one => one.Recorded).ThenBy(one => one.Mass.Kilograms).FirstOrDefault();
}
