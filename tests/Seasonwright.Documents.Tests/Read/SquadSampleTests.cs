using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Seasonwright.Core;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Squads;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Every sample squad list gives the result a careful human would read from it; the expected results lie beside the samples in tests/Cases/workbooks/samples.</summary>
public partial class SquadSampleTests
{
    public static TheoryData<string> Samples => ["squad-01-two-name-columns.csv", "squad-02-one-name-column.xlsx", "squad-03-pasted-list.txt"];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Rows_are_those_expected_column_by_column(string name)
    {
        var list = Read(name);
        Assert.Empty(list.Problems);
        var expected = ExpectedRows(name);
        Assert.Equal("row,family,given,number,position,born,mass,lifts,group,ask", string.Join(',', expected[0]));
        Assert.Equal(string.Join('\n', expected.Skip(1).Select(row => string.Join('|', row.Take(9)))), string.Join('\n', list.Rows.Select((row, i) => Text(row, LiftUnitsWritten(expected[i + 1][7])))));
    }

    /// <summary>An importer that asks more often is not wrong; one that guesses where a question is listed is.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_row_has_the_questions_expected(string name)
    {
        var list = Read(name);
        foreach (var (row, wanted) in list.Rows.Zip(ExpectedRows(name).Skip(1)))
            Assert.Empty(wanted[9].Split(' ', StringSplitOptions.RemoveEmptyEntries).Except(list.QuestionsOf(row).Select(question => question.Kind), StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_question_expected_is_asked_with_as_many_ways_to_answer(string name)
    {
        var list = Read(name);
        foreach (var wanted in Expected(name).GetProperty("questions").EnumerateArray())
        {
            var asked = list.Questions.FirstOrDefault(question => question.Kind == wanted.GetProperty("id").GetString());
            Assert.True(asked is not null, wanted.GetProperty("id").GetString());
            Assert.True(asked.Options.Count + (asked.Free is null ? 0 : 1) >= wanted.GetProperty("options").GetArrayLength(), asked.Text);
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void What_is_no_row_is_told(string name)
    {
        var told = Read(name).Skipped.Select(skipped => skipped.Line).ToList();
        foreach (var skipped in Expected(name).GetProperty("skipped").EnumerateArray())
            Assert.Contains(skipped.TryGetProperty("line", out var line) ? line.GetInt32() : skipped.GetProperty("row").GetInt32(), told);
    }

    [Theory]
    [InlineData("squad-01-two-name-columns.csv", "10", "Harbour Vale")]
    [InlineData("squad-02-one-name-column.xlsx", "8 10", "TELLWOOD UNIVERSITY WVB")]
    [InlineData("squad-03-pasted-list.txt", "13 14", "St Brannoc's School 1st XV")]
    public void Health_is_held_back_and_the_team_is_named(string name, string lines, string team)
    {
        var list = Read(name);
        Assert.Equal(lines, string.Join(' ', list.HeldBack.Select(held => held.Line).Distinct()));
        Assert.Equal(team, list.Team);
        string[] details = ["verletzt", "Kreuzband", "OP 12.6", "low back", "saw Dr", "deadlift until", "concussion", "stage 3", "physician", "asthma", "inhaler", "collar bone", "back Nov"];
        var shown = JsonSerializer.Serialize(list);
        Assert.All(details, detail => Assert.DoesNotContain(detail, shown, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Cells_and_comments_of_a_sheet_are_named_by_their_places()
    {
        var list = Read("squad-02-one-name-column.xlsx");
        Assert.Equal("H8, H10, the comment at H10, the colour of row 10", string.Join(", ", list.HeldBack.Select(held => held.Where)));
        Assert.Equal("Class, id", string.Join(", ", list.Reads.Unread));
        Assert.Equal((4, MassUnit.Pound, MassUnit.Pound), (list.Reads.HeadingLine, list.Reads.MassUnit, list.Reads.LiftUnit));
    }

    [Fact]
    public void Plain_remarks_and_heights_are_kept()
    {
        Assert.Equal("kommt erst im August; Cousine!; Probetraining bis 1.9.", string.Join("; ", Read("squad-01-two-name-columns.csv").Rows.Select(row => row.Remark).OfType<string>()));
        Assert.Equal("5'9\" 5'6\" 6'1\" 185 cm 6'2 5'5\" 6'0\" 6'3\"", string.Join(' ', Read("squad-02-one-name-column.xlsx").Rows.Select(row => row.Height)));
    }

    /// <summary>1 lb is 0.45359237 kg exactly (international yard and pound, 1959); the expected results give 141 lb as 63.96 kg and 15 st 2 lb as 212 lb.</summary>
    [Fact]
    public void What_is_entered_in_pounds_and_stones_stays_so()
    {
        Assert.Equal(63.96m, Math.Round(new EnteredMass(141, MassUnit.Pound).Kilograms, 2));
        Assert.Equal(new EnteredMass(212, MassUnit.Pound).Kilograms, new EnteredMass(15, MassUnit.Stone, 2).Kilograms);
    }

    internal static SquadList Read(string name, Answers? answers = null) => SquadReader.Read(name, File.ReadAllBytes(PathOf(name)), new SquadOptions(new(2026, 11, 26), answers));

    private static string PathOf(string name) => Path.Combine(EventCases.Folder, "..", "workbooks", "samples", name);

    private static JsonElement Expected(string name)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(PathOf(name + ".expected.json")));
        return json.RootElement.Clone();
    }

    private static List<ValueList<string>> ExpectedRows(string name) => [.. CellTable.Read(SourceText.OfText("expected", File.ReadAllText(PathOf(name + ".expected.csv")))).Rows.Where(row => !row.IsBlank).Select(row => row.Cells)];

    // The expected results write the unit of a lift where the list does, before or behind the repetitions.
    private static List<string> LiftUnitsWritten(string lifts) => [.. lifts.Split("; ")];

    private static string Text(SquadRow row, List<string> written) => string.Join('|', row.Line.ToString(CultureInfo.InvariantCulture), row.Family, row.Given, row.Number ?? "", string.Join('/', row.Positions),
        row.Born?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "", row.Mass?.ToString() ?? "", string.Join("; ", row.Lifts.Select((lift, i) => Text(lift, written.ElementAtOrDefault(i) ?? ""))), row.Group ?? "");

    private static string Text(SquadLift lift, string written)
    {
        var unit = lift.Weight.Unit == MassUnit.Kilogram ? "" : $" {lift.Weight.Unit.Word()}";
        var (weight, reps) = (lift.Weight.Amount.ToString("0.##", CultureInfo.InvariantCulture), lift.Reps is { } count ? $"x{count}" : "");
        return UnitFirst().IsMatch(written) ? $"{lift.Exercise} {weight}{unit} {reps}" : $"{lift.Exercise} {weight}{reps}{unit}";
    }

    [GeneratedRegex(@"(?:lb|kg) x\d", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex UnitFirst();
}
