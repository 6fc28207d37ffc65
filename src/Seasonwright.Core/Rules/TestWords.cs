using System.Text.RegularExpressions;

namespace Seasonwright.Core.Rules;

/// <summary>What the words of a test battery say about how tiring it is.</summary>
internal static partial class TestWords
{
    /// <summary>
    /// Whether every test that is named tires nobody: jumps, mobility, body measures, balance, questionnaires. Common practice, no
    /// source; a battery of other or unknown words counts as tiring.
    /// </summary>
    public static bool TireNobody(string battery)
    {
        var tests = Parts().Split(battery).Where(part => part.Length > 0).ToList();
        return tests.Count > 0 && tests.TrueForAll(test => Easy().IsMatch(test) && !Tiring().IsMatch(test));
    }

    /// <summary>Whether a battery holds sprints, which are run as fast as can be.</summary>
    public static bool NameSprints(string battery) => Sprints().IsMatch(battery);

    /// <summary>Whether a battery holds the most that can be lifted once.</summary>
    public static bool NameMaximalLifts(string battery) => MaximalLifts().IsMatch(battery);

    /// <summary>Whether a battery is of strength without saying how many repetitions: what it says of them makes it an estimate.</summary>
    public static bool NameStrength(string battery) => Strength().IsMatch(battery) && !Repetitions().IsMatch(battery);

    [GeneratedRegex(@"\b(?:1|one)[ -]?(?:rm|rep(?:etition)?s?)\b|\bmax(?:imal|imum)?[ -](?:strength|lifts?|squats?|deadlifts?|bench|press)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex MaximalLifts();

    [GeneratedRegex(@"\b(?:strength|squats?|deadlifts?|bench|press|cleans?|snatch)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Strength();

    [GeneratedRegex(@"\b\d+[ -]?(?:rm|reps?|repetitions?)\b|\bisometric\b|\bestimated?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Repetitions();

    [GeneratedRegex(@"\bsprints?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Sprints();

    [GeneratedRegex(@"\s*(?:[,;+&/]|\band\b)\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Parts();

    [GeneratedRegex(@"\b(?:jumps?|cmj|sj|mobility|flexibility|body (?:mass|measures?|composition)|weight|stature|height|skinfolds?|balance|posture|screens?|screening|questionnaires?|grip)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Easy();

    [GeneratedRegex(@"\b(?:repeated|max|maximal|maximum|rm|endurance|shuttle)\b|\d\s*rm\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Tiring();
}
