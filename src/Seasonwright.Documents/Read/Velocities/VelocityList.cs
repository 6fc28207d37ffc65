using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;

namespace Seasonwright.Documents.Read.Velocities;

/// <summary>Loads and velocities of one athlete in one lift, as a list holds them.</summary>
/// <param name="Unit">Of the loads: pounds where the heading says so.</param>
/// <param name="Problems">If not empty, there are no points.</param>
public sealed record VelocityList(MassUnit Unit, ValueList<VelocityPoint> Points, ValueList<Problem> Problems);
