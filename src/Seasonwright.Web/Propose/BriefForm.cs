using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Propose;

/// <summary>What is asked of a proposal, as it came back from its sheet.</summary>
/// <param name="Brief">Null while anything is wrong.</param>
/// <param name="Wrong">What is wrong, by field.</param>
/// <param name="Typed">What was typed, by field, so that it still stands there.</param>
public sealed record BriefForm(Brief? Brief, ImmutableSortedDictionary<string, string> Wrong, ImmutableSortedDictionary<string, string> Typed)
{
    public const string Largest = "largest", Pace = "pace", Start = "start", Between = "between", Tests = "tests", Taper = "taper.", Days = "days.", Hours = "hours.", Plans = "plans";

    /// <summary>The phases whose time can be told; a peak is competition.</summary>
    public static readonly ImmutableArray<PhaseKind> Phases = [PhaseKind.GeneralPreparation, PhaseKind.SpecificPreparation, PhaseKind.PreCompetition, PhaseKind.Competition, PhaseKind.Transition];

    internal static BriefForm Read(Posted form, Brief before)
    {
        var wrong = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var largest = Number(Largest, Core.Seasons.Brief.LeastWeek, Core.Seasons.Brief.MostWeek) ?? Core.Seasons.Brief.Default.LargestWeek.Value;
        var between = Number(Between, Core.Seasons.Brief.LeastWeeksBetween, Core.Seasons.Brief.MostWeeksBetween) ?? Core.Seasons.Brief.UsualWeeksBetween;
        var tests = Number(Tests, 0, Core.Seasons.Brief.MostTests);
        var time = Phases.Select(phase => new PhaseTime(phase, Number($"{Days}{phase}", PhaseTime.LeastDays, PhaseTime.MostDays), Number($"{Hours}{phase}", PhaseTime.LeastHours, PhaseTime.MostHours)))
            .Where(time => time is not { Days: null, Hours: null }).ToValueList();
        var said = form.Starting(Taper).Where(field => IdText.IsId(field.Name)).ToList();
        // What was said of matches that the sheet does not show stays.
        var tapers = said.Select(field => (Match: new MatchId(field.Name), Style: Word<TaperStyle>(field.Value))).Where(field => field.Style is not null).Select(field => new MatchTaper(field.Match, field.Style!.Value))
            .Concat((before.Tapers ?? []).Where(taper => !said.Exists(field => field.Name == taper.Match.Text))).ToValueList();
        var brief = new Brief(
            new Percent(largest),
            Word<Boldness>(form[Pace]) ?? Boldness.Usual,
            Word<StartLevel>(form[Start]),
            between,
            tests,
            tapers.Count == 0 ? null : tapers,
            time.Count == 0 ? null : time);
        return new(wrong.Count == 0 ? brief : null, wrong.ToImmutable(), form.Starting("").ToImmutableSortedDictionary(field => field.Name, field => field.Value, StringComparer.Ordinal));

        int? Number(string field, int least, int most)
        {
            var text = form[field].TrimEnd('%', ' ');
            if (text.Length == 0) return null;
            if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most) return number;
            wrong[field] = Words.Say("brief.wrong", text, least, most);
            return null;
        }

        static T? Word<T>(string text)
            where T : struct, Enum => Enum.TryParse<T>(text, out var word) && Enum.IsDefined(word) ? word : null;
    }

    /// <summary>A brief as the sheet shows it.</summary>
    public static BriefForm Of(Brief brief)
    {
        var typed = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            [Largest] = Text(brief.LargestWeek.Value),
            [Pace] = brief.Boldness.ToString(),
            [Start] = brief.Start?.ToString() ?? "",
            [Between] = Text(brief.WeeksBetween),
            [Tests] = Text(brief.Tests),
        };
        foreach (var time in brief.Time ?? []) (typed[$"{Days}{time.Phase}"], typed[$"{Hours}{time.Phase}"]) = (Text(time.Days), Text(time.Hours));
        foreach (var taper in brief.Tapers ?? []) typed[$"{Taper}{taper.Match}"] = taper.Style.ToString();
        return new(brief, ImmutableSortedDictionary<string, string>.Empty, typed.ToImmutableSortedDictionary(StringComparer.Ordinal));

        static string Text(int? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
    }

    public string this[string field] => Typed.GetValueOrDefault(field, "");
}
