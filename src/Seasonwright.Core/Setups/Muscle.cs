namespace Seasonwright.Core.Setups;

/// <summary>Muscle groups as coaches speak of them.</summary>
public enum Muscle
{
    Quadriceps,
    Hamstrings,
    Glutes,
    Adductors,
    Abductors,
    HipFlexors,
    Calves,
    Shins,
    Feet,
    Abdominals,
    Obliques,
    LowerBack,
    UpperBack,
    Lats,
    Chest,
    Shoulders,
    RotatorCuff,
    Biceps,
    Triceps,
    Forearms,
    Neck,
}
