using System.Collections.Immutable;
using Seasonwright.Core.Squad;

namespace Seasonwright.Store.People;

/// <summary>An athlete and everything that was told of them.</summary>
/// <param name="Memberships">Of every team, the earliest first.</param>
/// <param name="Reports">In the order they were written down.</param>
/// <param name="Absences">The earliest first.</param>
/// <param name="Weighings">The earliest first.</param>
/// <param name="Lifts">Tested sets, the earliest first.</param>
/// <param name="Runs">Running tests, the earliest first.</param>
/// <param name="Groups">In which groups of which seasons, the earliest first.</param>
public sealed record AthleteFile(
    Athlete Athlete, ImmutableArray<Membership> Memberships, ImmutableArray<AvailabilityReport> Reports, ImmutableArray<Absence> Absences, ImmutableArray<WeighIn> Weighings, ImmutableArray<LiftTest> Lifts, ImmutableArray<RunTest> Runs, ImmutableArray<GroupPlace> Groups);
