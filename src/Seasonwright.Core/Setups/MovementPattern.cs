namespace Seasonwright.Core.Setups;

/// <summary>What kind of movement an exercise is; hard sets are counted by it.</summary>
public enum MovementPattern
{
    /// <summary>Both feet: knees and hips bend together.</summary>
    Squat,

    /// <summary>One leg leads: lunges, split squats, step-ups.</summary>
    Lunge,

    /// <summary>The hip bends, the knee little.</summary>
    Hinge,

    /// <summary>Hamstrings at the knee.</summary>
    KneeFlexion,
    HorizontalPush,
    VerticalPush,
    HorizontalPull,
    VerticalPull,
    Arms,

    /// <summary>Shoulder blade and rotator cuff.</summary>
    Shoulder,

    /// <summary>Groin and outer hip.</summary>
    HipSides,

    /// <summary>Calf, shin and foot.</summary>
    LowerLeg,
    Neck,
    Trunk,
    Rotation,
    Carry,
    Jump,
    Throw,

    /// <summary>Snatch, clean, jerk and their parts: a bar moved fast.</summary>
    FastLift,
    Run,

    /// <summary>On a bike, rower, sled: conditioning without running.</summary>
    Conditioning,
    Mobility,
}
