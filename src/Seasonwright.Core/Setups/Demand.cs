namespace Seasonwright.Core.Setups;

/// <summary>What an exercise asks of a body that may have to do without: one for each restriction that a clinician can report.</summary>
/// <remarks>One rule for the whole book: where it is in doubt, the demand is there. Whoever reported a restriction may allow more. Common practice, no source.</remarks>
public enum Demand
{
    /// <summary>Under a weight, the body's own too, or against a resistance the knee bends past 90 degrees: full squats and lunges, leg curls, a bike.</summary>
    DeepKnee,

    /// <summary>A hand works above the head, or the body hangs from it.</summary>
    Overhead,

    /// <summary>Running near top speed, or speeding up as hard as possible.</summary>
    Sprint,

    /// <summary>Leaving the ground and landing; the feet of a caught clean, snatch or jerk do.</summary>
    Jump,

    /// <summary>Braking hard, or going off to another side.</summary>
    ChangeOfDirection,

    /// <summary>Bodies meet, or one meets the floor.</summary>
    Contact,

    /// <summary>The legs work or are stretched, or stand under a weight. Small work of arms and shoulders, as well done seated, and holding the body on the toes are none.</summary>
    Legs,

    /// <summary>The arms work, hold or steady what is lifted, or bear the body, on the forearms too.</summary>
    Arms,

    /// <summary>A load along the spine: on the back, before the chest, overhead or in hanging arms, and pushing or rowing with all the body. Small work of arms and shoulders is none.</summary>
    Spine,
}
