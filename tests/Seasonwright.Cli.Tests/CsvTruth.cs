using System.Diagnostics;
using System.Text;
using System.Text.Json;

namespace Seasonwright.Cli.Tests;

/// <summary>
/// CSV as the program writes it. Source of the form: RFC 4180, section 2 (1 to 7) and its grammar; lines end with LF as everywhere in the program's
/// output, where the RFC has CR LF.
/// </summary>
public class CsvTruth
{
    // What breaks a record where a writer is careless: each alone, and joined in every pair.
    private static readonly string[] Pieces =
        ["", "Turnes", ",", "\"", "\n", "\r\n", "\r", " ", "\t", "=1+1", "'", "-5", "ø", "東", "🤾", "\u2028", ";", "\"\"", "a,b\"c\"\nd"];

    private static readonly IReadOnlyList<string[]> Rows =
    [
        .. from first in Pieces from second in Pieces select new[] { first + second, second, first, "end" },
    ];

    private static readonly Table<string[]> Table = new([new("one", row => row[0]), new("two", row => row[1]), new("three", row => row[2]), new("four", row => row[3])]);

    /// <summary>RFC 4180, section 2, with a line feed for CRLF. Grammar: file = header LF record LF ...; a quoted field may hold anything with its quotes doubled, a bare one no comma, quote or line break.</summary>
    [Fact]
    public void Written_records_follow_the_grammar_and_hold_what_was_written() => Assert.Equal(Expected(), Parsed(Written()));

    /// <summary>Reference reader: Python's csv module in strict mode.</summary>
    [Fact]
    public async Task A_reader_that_is_not_ours_finds_the_same_records()
    {
        var start = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardInput = true, RedirectStandardOutput = true, UseShellExecute = false };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "Oracles", "read-csv.py"));
        using var reader = Process.Start(start)!;
        var reading = reader.StandardOutput.ReadToEndAsync();
        await reader.StandardInput.BaseStream.WriteAsync(Encoding.UTF8.GetBytes(Written()));
        reader.StandardInput.Close();
        var output = await reading;
        await reader.WaitForExitAsync();
        Assert.Equal(0, reader.ExitCode);
        Assert.Equal(Expected(), JsonSerializer.Deserialize<List<string[]>>(output)!);
    }

    private static List<string[]> Expected() => [["one", "two", "three", "four"], .. Rows.Select(row => row.Select(Disarmed).ToArray())];

    /// <summary>Source: OWASP ASVS 5.0, requirement 1.2.10: what a spreadsheet would run stands behind a single quote. A plain number stays.</summary>
    private static string Disarmed(string cell) => cell is ['=' or '+' or '-' or '@' or '\t' or '\r' or '\n', ..] && cell != "-5" ? $"'{cell}" : cell;

    private static string Written()
    {
        using var writer = new StringWriter { NewLine = "\n" };
        Table.WriteCsv(Rows, writer);
        return writer.ToString();
    }

    private static List<string[]> Parsed(string text)
    {
        var records = new List<string[]>();
        var fields = new List<string>();
        for (var at = 0; at < text.Length;)
        {
            var field = new StringBuilder();
            if (text[at] == '"')
            {
                for (at++; text[at] != '"' || text[at + 1] == '"'; at++)
                {
                    if (text[at] == '"') at++;
                    field.Append(text[at]);
                }
                at++;
            }
            else
            {
                for (; text[at] is not (',' or '\n'); at++)
                {
                    Assert.False(text[at] is '"' or '\r', $"A bare field holds {(int)text[at]}.");
                    field.Append(text[at]);
                }
            }
            fields.Add(field.ToString());
            Assert.True(text[at] is ',' or '\n', "Something follows a quoted field.");
            if (text[at++] == ',') continue;
            records.Add([.. fields]);
            fields.Clear();
        }
        Assert.Empty(fields);
        return records;
    }
}
