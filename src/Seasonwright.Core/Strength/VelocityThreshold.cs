namespace Seasonwright.Core.Strength;

/// <summary>The velocity of a single that can just be lifted, as measured in a group; every athlete's own is the better one.</summary>
/// <param name="MetresPerSecond">Mean or mean propulsive velocity.</param>
/// <param name="Deviation">Standard deviation in the group, m/s; null where none is printed.</param>
public sealed record VelocityThreshold(string Lift, double MetresPerSecond, double? Deviation, string Citation)
{
    /// <summary>120 men.</summary>
    public static VelocityThreshold BenchPress { get; } = new("bench press", 0.16, 0.04, "Gonzalez-Badillo JJ, Sanchez-Medina L 2010, Int J Sports Med 31(5):347-352");

    /// <summary>80 men.</summary>
    public static VelocityThreshold FullSquat { get; } = new("full squat", 0.32, 0.03, "Sanchez-Medina L et al. 2017, Sports Med Int Open 1(2):E80-E88");

    public static VelocityThreshold BenchPressOfTrials { get; } = new("bench press", 0.17, null, "used in trials: Isokinet Exerc Sci 2021 (IES-202247)");

    public static VelocityThreshold SquatOfTrials { get; } = new("squat", 0.30, null, "used in trials: Chen Z et al., J Strength Cond Res 39(4):e530-e537");

    public static ValueList<VelocityThreshold> All { get; } = [BenchPress, FullSquat, BenchPressOfTrials, SquatOfTrials];
}
