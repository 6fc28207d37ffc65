namespace Seasonwright.Core.Setups;

/// <summary>What makes an exercise heavier, and so how its weight is counted and rounded.</summary>
public enum LoadedBy
{
    /// <summary>Nothing but the body, a band or the effort.</summary>
    Nothing,

    /// <summary>Bar and plates together.</summary>
    Bar,

    /// <summary>Each of two dumbbells.</summary>
    TwoDumbbells,

    /// <summary>One dumbbell.</summary>
    OneDumbbell,
    Kettlebell,

    /// <summary>The pin of a machine or cable.</summary>
    Stack,
    MedicineBall,

    /// <summary>Plates on a sled.</summary>
    Sled,

    /// <summary>Hung on the body, which is lifted as well.</summary>
    OnTheBody,
}
