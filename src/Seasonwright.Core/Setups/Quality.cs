using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>A physical quality the team plans.</summary>
/// <param name="Place">Order on the page, lowest first.</param>
public sealed record Quality(QualityId Id, string Name, QualityKind Kind, int Place)
{
    /// <summary>The eight a team starts with.</summary>
    public static ValueList<Quality> Defaults { get; } = new(
    [
        new(new("hypertrophy"), "Hypertrophy", QualityKind.Hypertrophy, 1),
        new(new("maximum-strength"), "Maximum strength", QualityKind.MaximumStrength, 2),
        new(new("power"), "Power", QualityKind.Power, 3),
        new(new("speed"), "Speed, acceleration", QualityKind.Speed, 4),
        new(new("change-of-direction"), "Change of direction", QualityKind.ChangeOfDirection, 5),
        new(new("high-intensity"), "High-intensity cond.", QualityKind.HighIntensityConditioning, 6),
        new(new("aerobic"), "Aerobic conditioning", QualityKind.AerobicConditioning, 7),
        new(new("prevention"), "Prevention", QualityKind.Prevention, 8),
    ]);
}
