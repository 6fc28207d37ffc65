namespace Seasonwright.Core.Seasons;

/// <summary>What an exercise needs and a room or a home has.</summary>
public enum Equipment
{
    Barbell,

    /// <summary>A rack with safeties, or stands.</summary>
    Rack,
    Bench,

    /// <summary>A floor on which a bar may be dropped.</summary>
    Platform,
    TrapBar,
    Landmine,
    Dumbbells,
    Kettlebell,
    Cable,
    LegPress,
    LegCurl,
    LegExtension,
    CalfMachine,

    /// <summary>A bench or pad that holds the feet, for back extensions and hamstring lowers.</summary>
    BackExtension,
    Band,
    Box,
    MedicineBall,
    PullUpBar,
    DipBars,

    /// <summary>Rings or straps that hang.</summary>
    Straps,
    Sled,
    Bike,
    Rower,
    SwissBall,
    Sliders,
    Hurdles,
    Wheel,
    Partner,

    /// <summary>Room to run.</summary>
    Track,
    ArmBike,

    /// <summary>Water to swim in, or too deep to stand in.</summary>
    Pool,
}
