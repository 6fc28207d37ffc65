using System.Globalization;
using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Tests.Read;

public class DaySpanTextTests
{
    /// <summary>52 weeks, 47 weeks, and 53 weeks with days of July twice.</summary>
    private static readonly Dictionary<string, DaySpan> Seasons = new(StringComparer.Ordinal)
    {
        ["A"] = new(new(2026, 6, 29), new(2027, 6, 27)),
        ["B"] = new(new(2026, 7, 6), new(2027, 5, 30)),
        ["C"] = new(new(2026, 7, 5), new(2027, 7, 10)),
    };

    public static TheoryData<string, string, string, string, string> Cases
    {
        get
        {
            var data = new TheoryData<string, string, string, string, string>();
            foreach (var cells in File.ReadAllLines(EventCases.PathOf("spans.csv")).Skip(1).Select(line => line.Split(';'))) data.Add(cells[0], cells[1], cells[2], cells[3], cells[4]);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Reads_what_people_write(string text, string season, string order, string expected, string part)
    {
        var read = DaySpanText.Read(text, season.Length == 0 ? null : Seasons[season], order switch { "day-first" => DayOrder.DayFirst, "month-first" => DayOrder.MonthFirst, _ => null });
        Assert.Equal((expected, part), (Say(read), read.Part ?? ""));
    }

    [Fact]
    public void Never_throws_and_what_is_certain_is_a_span() =>
        Gen.Select(SpanTexts.Any, Gen.OneOf<DaySpan?>(null, Seasons["A"], Seasons["C"], new DaySpan(new(1, 1, 1), new(1, 1, 1)), new DaySpan(new(9999, 12, 1), new(9999, 12, 31)))).Sample((text, season) =>
        {
            var read = DaySpanText.Read(text, season);
            if (read.Doubt == SpanDoubt.None) Assert.True(read.From <= read.To, $"{read}");
            if (read.Only is { } only) Assert.Equal((read.From, read.To), (only[0], only[^1]));
        }, iter: 20_000);

    [Fact]
    public void A_span_written_in_any_usual_form_is_read_back() =>
        Gen.Select(Gen.Int[0, 363], Gen.Int[0, 30], Gen.OneOf("d MMM", "d MMMM yyyy", "MMMM d", "d.M.", "dd.MM.yyyy", "yyyy-MM-dd", "ddd d MMM", "dddd, d MMMM", "d-MMM-yy"), Gen.OneOf(" - ", " – ", "–", " to ", " bis ", " → ", " until "))
            .Sample((start, length, form, joiner) =>
            {
                var days = new DaySpan(Seasons["A"].First.AddDays(start), Seasons["A"].First.AddDays(Math.Min(start + length, 363)));
                var text = days.First.ToString(form, CultureInfo.InvariantCulture) + joiner + days.Last.ToString(form, CultureInfo.InvariantCulture);
                Assert.Equal($"{days}", $"{DaySpanText.Read(text, Seasons["A"]).Days} ".Trim());
            });

    private static string Say(SpanReading read)
    {
        if (read.Doubt == SpanDoubt.None)
            return read.Only is { } only ? $"{read.Days} on {string.Join(' ', only.Select(day => day.Day))}" : $"{read.Days}";
        var doubt = string.Concat(read.Doubt.ToString().Select((c, i) => i > 0 && char.IsUpper(c) ? $"-{c}" : $"{c}")).ToLowerInvariant();
        var choices = read.Choices.Count > 0 ? string.Join(" | ", read.Choices)
            : read.Doubt is SpanDoubt.OpenEnd or SpanDoubt.OpenStart && (read.From ?? read.To) is not null ? $"{read.From:O}..{read.To:O}" : "";
        return $"{doubt} {choices}".Trim();
    }
}
