using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Desk.Demo;

/// <summary>
/// What the demo trains when: base, then maximum strength, then power (rule quality-order), each kept alive after its turn;
/// no development of hypertrophy in the competition phase (rule hypertrophy-late).
/// </summary>
internal static class DemoEmphasis
{
    private static readonly (string Quality, int First, int Last, Emphasis Emphasis)[] Runs =
    [
        ("hypertrophy", 1, 4, Emphasis.Develop), ("hypertrophy", 5, 8, Emphasis.Maintain), ("hypertrophy", 27, 28, Emphasis.Maintain), ("hypertrophy", 45, 47, Emphasis.Maintain),

        ("maximum-strength", 1, 4, Emphasis.Maintain), ("maximum-strength", 5, 8, Emphasis.Focus), ("maximum-strength", 9, 12, Emphasis.Develop), ("maximum-strength", 13, 16, Emphasis.Maintain),
        ("maximum-strength", 17, 17, Emphasis.Focus), ("maximum-strength", 18, 19, Emphasis.Develop), ("maximum-strength", 20, 26, Emphasis.Maintain), ("maximum-strength", 27, 31, Emphasis.Develop), ("maximum-strength", 32, 43, Emphasis.Maintain),
        ("maximum-strength", 46, 47, Emphasis.Maintain),

        ("power", 1, 8, Emphasis.Maintain), ("power", 9, 12, Emphasis.Develop), ("power", 13, 16, Emphasis.Focus), ("power", 17, 24, Emphasis.Develop),
        ("power", 27, 28, Emphasis.Maintain), ("power", 29, 32, Emphasis.Develop), ("power", 33, 39, Emphasis.Focus), ("power", 40, 43, Emphasis.Develop),

        ("speed", 3, 4, Emphasis.Maintain), ("speed", 5, 8, Emphasis.Develop), ("speed", 9, 24, Emphasis.Maintain), ("speed", 27, 32, Emphasis.Maintain), ("speed", 33, 43, Emphasis.Develop),

        ("change-of-direction", 5, 6, Emphasis.Maintain), ("change-of-direction", 7, 8, Emphasis.Develop), ("change-of-direction", 9, 24, Emphasis.Maintain), ("change-of-direction", 28, 43, Emphasis.Maintain),

        ("high-intensity", 3, 4, Emphasis.Maintain), ("high-intensity", 5, 8, Emphasis.Develop), ("high-intensity", 9, 24, Emphasis.Maintain), ("high-intensity", 27, 28, Emphasis.Develop),
        ("high-intensity", 29, 40, Emphasis.Maintain),

        ("aerobic", 1, 4, Emphasis.Focus), ("aerobic", 5, 8, Emphasis.Maintain), ("aerobic", 25, 26, Emphasis.Maintain), ("aerobic", 27, 28, Emphasis.Develop), ("aerobic", 45, 47, Emphasis.Maintain),

        ("prevention", 1, 24, Emphasis.Maintain), ("prevention", 26, 43, Emphasis.Maintain), ("prevention", 45, 47, Emphasis.Maintain),
    ];

    public static IEnumerable<SeasonEdit> Of(DemoCalendar calendar) =>
        Runs.Select(run => new SetEmphasis(calendar.Week(run.First), calendar.Week(run.Last), new(run.Quality), run.Emphasis));
}
