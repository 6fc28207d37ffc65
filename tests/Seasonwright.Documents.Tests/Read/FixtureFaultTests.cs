using System.Text;
using CsCheck;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Broken files: problems in words, no throw, no half of a list.</summary>
public class FixtureFaultTests
{
    private static readonly string[] Files = [.. Directory.GetFiles(Path.Combine(FixtureCases.Folder, "samples"), "fixtures-*").Where(file => !file.Contains("expected", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    private static readonly string[] Teams = ["Harbour Vale", "1st XV", "Tellwood", "Nobody"];

    [Fact]
    public void Hundreds_of_broken_files_are_told_and_never_thrown()
    {
        var count = 0;
        foreach (var bytes in Files.Select(File.ReadAllBytes))
        {
            foreach (var broken in Breaks(bytes))
            {
                foreach (var team in Teams.Take(2)) Check(SourceText.OfBytes("broken", broken), team);
                Check(SourceText.OfBytes("broken", broken), null);
                count++;
            }
        }
        Assert.True(count >= 300, $"{count} files");
    }

    // Cut off, shifted by a byte, another encoding, lines twice or without delimiters, quotes opened, days out of range, junk in the middle.
    private static IEnumerable<byte[]> Breaks(byte[] bytes)
    {
        for (var cut = 1; cut < 20; cut++) yield return bytes[..(bytes.Length * cut / 20)];
        yield return bytes[1..];
        yield return [.. bytes, .. bytes];
        yield return Encoding.BigEndianUnicode.GetBytes(Encoding.UTF8.GetString(bytes));
        yield return Encoding.UTF32.GetBytes(Encoding.Latin1.GetString(bytes));
        yield return [.. bytes, .. new byte[200]];
        var text = Encoding.Latin1.GetString(bytes);
        string[] made =
        [
            text.Replace(",", "", StringComparison.Ordinal), text.Replace("\n", "", StringComparison.Ordinal), text.Replace("\n", "\n\"", StringComparison.Ordinal), text + "\n\"never closed",
            text.Replace("202", "992", StringComparison.Ordinal), text.Replace("20", "00", StringComparison.Ordinal), text.Replace("-09-", "-13-", StringComparison.Ordinal), text.Replace("Date", "Dose", StringComparison.Ordinal),
            text.Replace("Harbour Vale", "", StringComparison.Ordinal), text + new string('x', SourceText.LongestLine + 1), text.Replace('\n', '\t'), text.Replace(" ", "\u00A0", StringComparison.Ordinal),
            string.Concat(text.Reverse()), text.ToUpperInvariant(), text.Replace(',', ';'), text.Split('\n')[0], string.Join('\n', text.Split('\n').Skip(1)),
        ];
        foreach (var variant in made) yield return Encoding.Latin1.GetBytes(variant);
    }

    [Theory]
    [InlineData("{")]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("[1, 2]")]
    [InlineData("{ \"matches\": [ { \"date\": 5 } ] }")]
    [InlineData("{ \"matches\": [ { \"team1\": \"\\ud800\", \"team2\": \"B\", \"date\": \"2026-09-05\" } ] }")]
    [InlineData("Date,Home,Away\n")]
    [InlineData("Date,Home,Away\n2026-09-05,Kalnes,Brovik\n")]
    [InlineData("Date,Time,Remarks\n2026-09-05,18:00,x\n")]
    [InlineData("just some words")]
    public void A_list_without_our_matches_says_why(string text)
    {
        var read = FixtureReader.Read(SourceText.OfText("list", text), new FixtureOptions("Harbour Vale"));
        Assert.Empty(read.Rows);
        Assert.True(read.Problems.Count > 0 || read.Questions.Count > 0 || read.Skipped.Count > 0);
    }

    [Fact]
    public void An_unknown_team_is_a_problem_that_names_those_there_are()
    {
        var read = FixtureCases.Read("samples/fixtures-01-league-ids.csv", "Nobody");
        var problem = Assert.Single(read.Problems);
        Assert.Equal("team-unknown", problem.Id);
        Assert.Contains("Ostermeer, Sportverein", problem.Mend, StringComparison.Ordinal);
        // A name that is nearly there comes first among all, and is not taken.
        var near = FixtureCases.Read("samples/fixtures-01-league-ids.csv", "Harbor Vale");
        Assert.Equal("Harbour Vale", near.Questions.Single(question => question.Kind == "Q-team").Options[0].Id);
        Assert.Empty(near.Rows);
        Assert.Equal(10, FixtureCases.Read("samples/fixtures-01-league-ids.csv", "Harbor Vale", Answers.None.With("Q-team", "Harbour Vale")).Rows.Count);
    }

    [Fact]
    public void No_text_makes_a_reader_throw() => Gen.OneOf(Gen.String, Gen.Char["0123456789/.-: \t,;|\"\nJanSatvs@()?=#KW"].Array[0, 120].Select(chars => new string(chars))).Sample(text =>
    {
        Check(SourceText.OfText("random", text), "Harbour Vale");
        Check(SourceText.OfBytes("random", Encoding.UTF8.GetBytes("Date,Time,Home,Away,Result,Remarks\n" + text)), null);
        _ = DateText.FindAll(text, months: true).Count();
        _ = TimeText.Read(text);
    }, iter: 1000);

    [Fact]
    public void No_bytes_make_a_reader_throw() => Gen.Byte.Array[0, 300].Sample(bytes => Check(SourceText.OfBytes("random", bytes), "Harbour Vale"), iter: 1000);

    /// <summary>Cells as lists have them, put together by chance: headings known, unknown and none, dates and blanks, times, scores, names and marks.</summary>
    [Fact]
    public void Every_line_of_any_list_is_a_row_or_told_whatever_is_answered() => Lists.Sample(text =>
    {
        foreach (var team in new[] { "Harbour Vale", null })
        {
            var (source, answers) = (SourceText.OfText("random", text), Answers.None);
            for (var round = 0; round < 6; round++)
            {
                var read = FixtureReader.Read(source, new FixtureOptions(team, answers));
                Check(source, team, answers);
                if (read.Problems.Count > 0 || read.Questions.Count == 0) break;
                // One question more is answered in each round, by another of its options.
                var question = read.Questions[round % read.Questions.Count];
                if (question.Options.Count == 0) break;
                answers = answers.With(question.Key, question.Options[(round + text.Length) % question.Options.Count].Id);
            }
        }
    }, iter: 1500);

    private static Gen<string> AnyOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static readonly Gen<string> Lists = Gen.Select(AnyOf("\t", ";", ","), AnyOf(
            "Date|Time|Home|Away", "Date|Opponent|Venue|Result", "Päivä|Klo|Koti|Vieras", "Datum|Zeit|Spiel", "Date|Team|Home|Away", "Tarih|Rakip|Salon|Not", ""),
        AnyOf("5 Sep 2026", "12.9.2026", "2026-09-19", "10/11/2026", "Sat", "Saturday 26 September 2026", "week 43", "", "", "", "18:00", "19:30", "20:15", "28:24", "18:22", "TBC", "Harbour Vale", "Harbour Vale", "Kalnes", "Kalnes HK",
            "Brovik", "Harbour Vale v Kalnes", "@ Brovik", "v", "-", "H", "A", "postponed", "if we win", "Bye", "Total", "Round 3", "U16", "U18", "=1+1", "#REF!", "\"two\nlines\"", "\"open").Array[0, 6].Array[0, 12])
        .Select((delimiter, headings, rows) => string.Join('\n', rows.Select(row => string.Join(delimiter, row)).Prepend(headings.Replace("|", delimiter, StringComparison.Ordinal))));

    /// <summary>What is written as a day of any year in any of the usual forms is read as that day.</summary>
    [Fact]
    public void A_day_written_in_any_form_is_that_day() => Gen.Select(Gen.Int[0, 365 * 60], Gen.Int[0, 7]).Sample((days, form) =>
    {
        var day = new DateOnly(2000, 1, 1).AddDays(days);
        var text = day.ToString(new[] { "yyyy-MM-dd", "d.M.yyyy", "ddd d MMM yyyy", "MMMM d, yyyy", "dddd, d. MMMM yyyy", "d-MMM-yyyy", "yyyy/MM/dd", "dd.MM.yyyy" }[form], System.Globalization.CultureInfo.InvariantCulture);
        var reading = DateColumn.Read([new LineDate(1, DateText.Find(text)!)], new DateHints(), new Asker(Answers.None)).Readings[0];
        return reading.First == day && !reading.WeekdayDiffers;
    }, iter: 2000);

    private static void Check(SourceText source, string? team, Answers? answers = null)
    {
        var read = FixtureReader.Read(source, new FixtureOptions(team, answers));
        Assert.All(read.Problems, problem => Assert.True(problem.What.Length > 0 && problem.Mend.Length > 0));
        if (read.Problems.Count > 0) Assert.Empty(read.Rows);
        Assert.All(read.Rows, row => Assert.True(row.Day is null || DateColumn.IsPossible(row.Day.Value)));
        Assert.All(read.Rows, row => Assert.True(row.LastDay is null || row.LastDay > row.Day));
        if (read.Problems.Count == 0) AllToldOf(source, read);
        var update = FixtureUpdate.Compare([], read);
        if (!read.IsBlocked) Assert.Equal(read.Rows.Count, update.Changes.Count);
    }

    // A calendar has rows where its entries begin. A row starts on its line and holds the lines its quoted cells run over; JSON has rows where its objects begin.
    private static void AllToldOf(SourceText source, FixtureList read)
    {
        var told = read.Rows.Select(row => row.Line).Concat(read.Skipped.Select(skipped => skipped.Line)).ToHashSet();
        if (source.Text.TrimStart().StartsWith("BEGIN:VCALENDAR", StringComparison.OrdinalIgnoreCase))
        {
            Assert.All(FixtureCases.EntryLines(source), line => Assert.Contains(line, told));
            return;
        }
        var rows = CellTable.Read(source).Rows;
        if (source.Text.TrimStart() is ['{' or '[', ..] || rows.Count == 0) return;
        Assert.All(rows, row => Assert.Contains(row.Line, told));
        Assert.Equal(1, rows[0].Line);
        Assert.All(rows.Zip(rows.Skip(1)), pair => Assert.Equal(pair.First.Line + pair.First.Raw.Split('\n').Length, pair.Second.Line));
    }
}
