using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>
/// The team's figures that the engine plans within, from the same parameters that the rulebook judges by. Shares are per mille.
/// A figure that cannot be read counts as its default.
/// </summary>
public sealed record Limits
{
    /// <summary>weekly-ramp: a week rises by at most so many points ...</summary>
    public int RampPoints { get; init; } = 10;

    /// <summary>... and by at most this share of the last comparable week.</summary>
    public int RampShare { get; init; } = 150;

    /// <summary>building-run-too-long: loading weeks in a row in preparation.</summary>
    public int BuildingWeeks { get; init; } = 3;

    /// <summary>building-run-too-long: loading weeks in a row in the competition.</summary>
    public int InSeasonWeeks { get; init; } = 8;

    /// <summary>unloading-size: what an unloading week keeps of the training, in preparation.</summary>
    public Range Unloading { get; init; } = new(500, 700);

    /// <summary>unloading-size in the competition.</summary>
    public Range UnloadingInCompetition { get; init; } = new(700, 850);

    /// <summary>taper-volume of one week: what it keeps of the training.</summary>
    public Range ShortTaper { get; init; } = new(650, 800);

    /// <summary>taper-volume of two weeks.</summary>
    public Range FullTaper { get; init; } = new(400, 590);

    /// <summary>heavy-week-in-congestion: training beside two or more matches, as a share of a one-match week's.</summary>
    public int CongestedShare { get; init; } = 600;

    /// <summary>return-after-break-volume: days off after which comparisons begin anew.</summary>
    public int AbsenceDays { get; init; } = 14;

    /// <summary>return-after-break-volume: what the first and second week back keep of the weeks before a long break.</summary>
    public (int First, int Second) ReturnShares { get; init; } = (500, 700);

    /// <summary>return-after-break-volume: points of the first and second week of the season and after a transition.</summary>
    public (int First, int Second) ReturnPoints { get; init; } = (50, 70);

    /// <summary>return-after-break-volume: what the week after one week off keeps.</summary>
    public int WeekOffShare { get; init; } = 800;

    /// <summary>return-after-break-volume: points beside a match that are always within in a week back, after a long break and after one week off.</summary>
    public (int Long, int WeekOff) MatchMargins { get; init; } = (14, 24);

    /// <summary>peaks-too-many: most tapers in a season.</summary>
    public int Peaks { get; init; } = 3;

    /// <summary>peaks-too-many: key matches so many days apart at most are one cluster.</summary>
    public int ClusterDays { get; init; } = 14;

    /// <summary>peaks-too-many: weeks from one taper to the next.</summary>
    public int WeeksBetweenPeaks { get; init; } = 6;

    /// <summary>trailing-four-spike: a week against the mean of the weeks before.</summary>
    public int TrailingRatio { get; init; } = 1300;

    /// <summary>trailing-four-spike: how many weeks before.</summary>
    public int TrailingWeeks { get; init; } = 4;

    /// <summary>base-load-low: the share of a typical week that the four weeks before a match hold.</summary>
    public int BaseShare { get; init; } = 700;

    /// <summary>base-load-low: points of a typical week.</summary>
    public int TypicalPoints { get; init; } = 72;

    /// <summary>base-load-low: an official match within so many days of the week's first is looked at.</summary>
    public int LookAheadDays { get; init; } = 14;

    /// <summary>quality-order: weeks that develop strength before power is developed, and muscle before strength is after so many days away.</summary>
    public (int Strength, int Base, int LayoffDays) Grounds { get; init; } = (3, 2, 21);

    /// <summary>hypertrophy-late: days before a key match from which muscle is no longer developed.</summary>
    public int HypertrophyDays { get; init; } = 21;

    /// <summary>taper-intensity-frequency: the share of exposures a taper keeps ...</summary>
    public int TaperFrequency { get; init; } = 800;

    /// <summary>... of the mean of so many normal weeks before it.</summary>
    public int TaperReferenceWeeks { get; init; } = 2;

    /// <summary>test-timing: hours to an official match, from one, and days to a key match, more than which a test lies apart.</summary>
    public (int HoursBefore, int HoursAfter, int DaysToKeyMatch) TestDistance { get; init; } = (72, 48, 10);

    /// <summary>test-timing: how heavy a week with a test may be beside the four before.</summary>
    public int TestHeavy { get; init; } = 1100;

    public static Limits Of(Setup setup)
    {
        var (ramp, run, unloading, taper) = (new Reader(setup, "weekly-ramp"), new Reader(setup, "building-run-too-long"), new Reader(setup, "unloading-size"), new Reader(setup, "taper-volume"));
        var (back, peaks, trailing, low) = (new Reader(setup, "return-after-break-volume"), new Reader(setup, "peaks-too-many"), new Reader(setup, "trailing-four-spike"), new Reader(setup, "base-load-low"));
        var (order, frequency, tests) = (new Reader(setup, "quality-order"), new Reader(setup, "taper-intensity-frequency"), new Reader(setup, "test-timing"));
        var cuts = back.Shares("cut_short", 500, 300);
        return new Limits
        {
            RampPoints = ramp.Whole("caution_points", 10, 0, 100),
            RampShare = ramp.Share("caution_up", 150),
            BuildingWeeks = run.Whole("max_building_weeks", 3, 1, 12),
            InSeasonWeeks = run.Whole("in_season_max_weeks", 8, 1, 60),
            Unloading = unloading.Kept("min_drop", 300, "max_drop", 500),
            UnloadingInCompetition = unloading.Kept("competition_min_drop", 150, "competition_max_drop", 300),
            ShortTaper = taper.Kept("short_min_drop", 200, "short_max_drop", 350),
            FullTaper = taper.Kept("min_drop", 410, "max_drop", 600),
            CongestedShare = new Reader(setup, "heavy-week-in-congestion").Share("max_share", 600),
            AbsenceDays = back.Whole("min_absence_days", 14, 1, 100),
            ReturnShares = (1000 - cuts.First, 1000 - cuts.Second),
            ReturnPoints = (back.Whole("first_points", 50, 0, 200), back.Whole("second_points", 70, 0, 200)),
            WeekOffShare = back.Share("week_off_share", 800),
            MatchMargins = (back.Whole("match_margin_points", 14, 0, 200), back.Whole("week_off_margin_points", 24, 0, 200)),
            Peaks = peaks.Whole("max_peaks", 3, 0, 60),
            ClusterDays = peaks.Whole("cluster_days", 14, 0, 100),
            WeeksBetweenPeaks = peaks.Whole("min_gap_weeks", 6, 0, 60),
            TrailingRatio = trailing.Share("caution_ratio", 1300),
            TrailingWeeks = trailing.Whole("weeks", 4, 1, 12),
            BaseShare = low.Share("min_share", 700),
            TypicalPoints = low.Whole("typical_points", 72, 0, 200),
            LookAheadDays = low.Whole("look_ahead_days", 14, 0, 100),
            Grounds = (order.Whole("min_strength_weeks", 3, 0, 60), order.Whole("min_base_weeks", 2, 0, 60), order.Whole("layoff_days", 21, 0, 400)),
            HypertrophyDays = new Reader(setup, "hypertrophy-late").Whole("min_gap_days", 21, 0, 400),
            TaperFrequency = frequency.Share("min_frequency", 800),
            TaperReferenceWeeks = frequency.Whole("reference_weeks", 2, 1, 12),
            TestDistance = (tests.Whole("before_match_h", 72, 0, 1000), tests.Whole("after_match_h", 48, 0, 1000), tests.Whole("decisive_days", 10, 0, 100)),
            TestHeavy = tests.Share("heavy_ratio", 1100),
        };
    }

    /// <summary>From the least to the most, both inside.</summary>
    public readonly record struct Range(int Least, int Most);

    private readonly record struct Reader(Setup Setup, string Rule)
    {
        public int Whole(string name, int usual, int least, int most) => Read(Text(name)) is { } set ? (int)Math.Clamp(Math.Round(set), least, most) : usual;

        /// <summary>A share per mille, 0 to 3000.</summary>
        public int Share(string name, int usual) => Read(Text(name)) is { } set ? PerMille(set) : usual;

        public (int First, int Second) Shares(string name, int first, int second) =>
            Text(name)?.Split([' ', ',', '[', ']'], StringSplitOptions.RemoveEmptyEntries).Select(Read).ToList() is [{ } one, { } two, ..] ? (PerMille(one), PerMille(two)) : (first, second);

        /// <summary>What a cut between two drops leaves.</summary>
        public Range Kept(string least, int usualLeast, string most, int usualMost)
        {
            var (small, large) = (Share(least, usualLeast), Share(most, usualMost));
            return new Range(1000 - Math.Clamp(Math.Max(small, large), 0, 1000), 1000 - Math.Clamp(Math.Min(small, large), 0, 1000));
        }

        private string? Text(string name) => Setup.RuleParameter(new RuleParameter(Rule, name));

        private static decimal? Read(string? text) => decimal.TryParse(text, NumberStyles.Number & ~NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var number) ? Math.Clamp(number, -1_000_000, 1_000_000) : null;

        private static int PerMille(decimal share) => (int)Math.Clamp(Math.Round(1000 * share), 0, 3000);
    }
}
