using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>A run that somebody did as far or as fast as they could: a time trial over set metres, or a run of set minutes. A correction is a newer row for the same day.</summary>
/// <param name="Id">Brought by whoever records it, so that what is sent twice is one test.</param>
/// <param name="Metres">800 to 4,000.</param>
/// <param name="Seconds">180 to 900.</param>
/// <param name="Recorded">When it was written down.</param>
/// <remarks>
/// Its mean speed stands for the slowest speed that takes all the oxygen somebody can use, which intervals are given in per cent of. That holds of runs of about five to eight minutes:
/// over 5 min 48 men ran 17.1 km/h, on the treadmill it was 16.9 (Berthon P et al. 1997, Eur J Appl Physiol 75:233-238); of trials over set distances 2,000 m agreed best
/// (Bellenger CR et al. 2015, Eur J Appl Physiol 115:2593-2598; that distance from memory). Shorter runs say too much, longer ones too little; beyond the bounds here no speed is taken from them, common practice, no source.
/// </remarks>
public sealed record RunTest(Guid Id, PersonId Person, DateOnly Day, int Metres, int Seconds, DateTimeOffset Recorded)
{
    public const int LeastMetres = 800, MostMetres = 4_000, LeastSeconds = 180, MostSeconds = 900;

    /// <summary>Metres a second; what is slower is a walk, what is faster nobody has run so far. Common practice, no source.</summary>
    public const decimal LeastSpeed = 1.5m, MostSpeed = 7;

    /// <summary>Mean speed in metres a second, not rounded: metres by seconds.</summary>
    public decimal Speed => (decimal)Metres / Seconds;

    /// <summary>Days after which a test is called old. Common practice, no source.</summary>
    public const int FreshDays = Maximum.FreshDays;

    /// <summary>Whether a run was so fast or slow that something must have been written down wrongly.</summary>
    public static bool IsSpeed(int metres, int seconds) => seconds > 0 && (decimal)metres / seconds is >= LeastSpeed and <= MostSpeed;

    /// <summary>The newest of one person's up to a day; null where there is none.</summary>
    public static RunTest? On(DateOnly day, IEnumerable<RunTest> tests) => tests.Where(test => test.Day <= day).MaxBy(test => (test.Day, test.Recorded, test.Id));

    /// <summary>What holds of one person's tests: of each day what was written down last, the earliest first.</summary>
    public static IEnumerable<RunTest> Standing(IEnumerable<RunTest> tests) => tests.GroupBy(test => test.Day).Select(same => same.MaxBy(test => (test.Recorded, test.Id))!).OrderBy(test => test.Day);
}
