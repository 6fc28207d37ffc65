namespace Seasonwright.Solver;

/// <summary>What the search for a structure pays and charges. In units: a thousandth of a point of value.</summary>
/// <remarks>Weights tried against what a coach expects; planning preferences, no source.</remarks>
internal static class Worth
{
    public const long Point = 1000;

    /// <summary>A per mille of the mean preparedness.</summary>
    public const long PreparednessOnKeyMatches = 6 * Point, PreparednessOnOthers = 9 * Point / 10;

    /// <summary>A point of change from one competition week to the next.</summary>
    public const long Change = 3 * Point / 10;

    /// <summary>A change of phase inside a run of loading weeks or into an unloading week.</summary>
    public const long PhaseChangeInBlock = 60 * Point;

    /// <summary>An unloading week with a match in it, and one of the two weeks before the competition.</summary>
    public const long UnloadingWithMatch = 10 * Point, UnloadingBeforeCompetition = 40 * Point;

    /// <summary>Unloading in the first light week after two congested ones or more.</summary>
    public const long UnloadingAfterCongestion = 60 * Point;

    /// <summary>Unloading right before a break or the season's transition, which unload anyway.</summary>
    public const long UnloadingBeforeRest = 150 * Point;

    /// <summary>A taper that follows an unloading week with nothing between them.</summary>
    public const long TaperAfterUnloading = 150 * Point;

    /// <summary>What a plan pays for a week that differs from the one that stands, at the usual weight of keeping it.</summary>
    public const long AnotherKind = 40 * Point, AnotherPhase = 32 * Point, EveryPoint = 4 * Point, MoreThanFew = 24 * Point;

    /// <summary>Points of change that nobody minds much.</summary>
    public const int FewPoints = 4;

    /// <summary>A condition broken, for each unit of its weight; a tenth of it for every point or week beyond.</summary>
    public const long Broken = 100_000 * Point;

    /// <summary>The same in stage C, where the worst of the key matches counts beside their mean.</summary>
    public const long MeanOnKeyMatches = 2 * Point, WorstOnKeyMatches = 4 * Point;

    /// <summary>A point of load beyond a condition in stage C, where matches or entered practices alone go beyond it, and short of the base load.</summary>
    public const long BeyondLoad = 400 * Point, BeyondByFacts = 20 * Point, ShortOfBase = 60 * Point;

    /// <summary>A point by which an unloading week unloads too little beside the last normal week alone.</summary>
    public const long LittleUnloading = 20 * Point;

    /// <summary>The lines whose largest is what <see cref="FromGuide"/> says: a price for every tenth of a point, and what is taken off.</summary>
    public static readonly (long Slope, long Less)[] GuideSlopes = [(150, 0), (400, 12_500), (900, 62_500)];

    /// <summary>Stage B: a per mille of a goal's stock, an exposure that a phase wishes for and a loading week lacks, a level changed between blocks of one phase and of two.</summary>
    public const long Stock = 10 * Point, MissingExposure = 14 * Point, ChangeInPhase = 25 * Point, ChangeOfPhase = 4 * Point;

    /// <summary>A day of tests, what one in an unloading week is better by, and stretches without any.</summary>
    public const long Test = 10 * Point, TestInUnloading = 4 * Point, NoTestInWindow = 20 * Point, NoFirstTest = 200 * Point, NoTestBeforeCompetition = 60 * Point;

    /// <summary>A level of emphasis of a week that leaves what stands.</summary>
    public const long EveryLevel = 30 * Point;

    private static readonly long[] PreparationBlock = [0, 150, 30, 0, 0, 0, 0];

    private static readonly long[] CompetitionBlock = [0, 120, 60, 20, 0, 0, 20];

    /// <summary>What a block of so many loading weeks costs.</summary>
    public static long Block(int weeks, bool isCompetition) => Point * (isCompetition ? CompetitionBlock : PreparationBlock)[Math.Min(weeks, 6)];

    /// <summary>What a load costs that is so far from the guide: gently at first, then steeply.</summary>
    /// <param name="tenths">Tenths of a point, 0 or more.</param>
    public static long FromGuide(int tenths)
    {
        long cost = 0;
        foreach (var (slope, less) in GuideSlopes) cost = Math.Max(cost, slope * tenths - less);
        return cost;
    }
}
