using System.Text.Encodings.Web;
using System.Text.Json;
using CsCheck;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Squads;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Broken and hostile squad lists: problems in words or rows, never a throw, and nothing that tells of health in anything that comes out.</summary>
public class SquadFaultTests
{
    internal static readonly JsonSerializerOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly string[] Details = ["torn ACL in March", "Kreuzband gerissen", "knee pain again", "asthma", "saw Dr. Holm", "concussion, stage 3", "verletzt bis Mai", "low back", "skadet ankel", "out until further notice"];

    private static readonly Gen<string> Cell = Gen.Frequency((6, Gen.OneOf("Varnum, Ysolde", "Maren Thistlewick", "Thistlewick", "Oswin", "7", "0", "4./5.", "TW", "KM/RL", "prop", "14.3.1999", "7/8/99", "2006-01-18", "38912", "1997", "71,5", "75 kg", "15st 2lb", "1780 lb", "85x5", "200 lb x5", "x", "-", "?", "", "183 cm", "5'9\"", "A", "Cousine!", "(c)", "STAFF", "Total", "#DIV/0!", "=1+1", "tbc", "16", "squat 140 x 3", "bench 105")),
        (2, Gen.OneOf(Details)), (1, Gen.String[0, 12]));

    private static readonly Gen<string> Texts = Gen.Select(
        Gen.OneOf("", "Nr;Nachname;Vorname;Pos;geb.;Gewicht;Kniebeuge;Bemerkung\n", "Name\tNo\tPos\tDOB\tWt\tSquat\tNotes\n", "Name,No,Medical\n", "Harbour Vale squad\nFORWARDS\n1. Oswin Vane (prop)\n", "Maxes (kg);;\nName;Squat;Bench\n", "Injured:\n"),
        Gen.Select(Cell, Gen.Frequency((6, Gen.OneOf(";", ",", "\t", ", ", " – ")), (3, Gen.Const("\n")), (1, Gen.OneOf("\" ", "\n\n", "(", ")", ": ")))).Array[0, 40],
        (heading, pieces) => heading + string.Concat(pieces.Select(piece => piece.Item1 + piece.Item2)));

    [Fact]
    public void Any_text_is_read_whole_or_told() => Texts.Sample(text =>
    {
        var source = SourceText.OfText("squad", text);
        AssertWhole(source, SquadReader.Read(source, SquadOwnTests.Options()));
        SquadReader.Is(source);
    }, iter: 2000);

    /// <summary>Digits of another script are words here; reading them as figures threw.</summary>
    [Fact]
    public void Digits_of_other_scripts_are_no_figures()
    {
        var list = SquadReader.Read(SourceText.OfText("squad", "Name;No;Weight;Squat\nVarnum, Ysolde;1;١٢ kg;١٢x٣\n"), SquadOwnTests.Options());
        Assert.Null(Assert.Single(list.Rows).Mass);
        SquadReader.Is(SourceText.OfText("squad", "Ysolde Varnum, ١٢ kg, 71 kg\n"));
    }

    /// <summary>Cut anywhere, bytes turned, pieces repeated.</summary>
    [Theory]
    [InlineData("squad-01-two-name-columns.csv")]
    [InlineData("squad-02-one-name-column.xlsx")]
    [InlineData("squad-03-pasted-list.txt")]
    public void A_spoilt_sample_never_throws(string name)
    {
        var bytes = File.ReadAllBytes(Path.Combine(EventCases.Folder, "..", "workbooks", "samples", name));
        Gen.Select(Gen.Int[0, bytes.Length], Gen.Select(Gen.Int[0, bytes.Length - 1], Gen.Byte).Array[0, 6], Gen.Bool).Sample((cut, turned, cuts) =>
        {
            var spoilt = cuts ? bytes[..cut] : [.. bytes];
            foreach (var (at, to) in turned.Where(turn => turn.Item1 < spoilt.Length)) spoilt[at] = to;
            var list = SquadReader.Read(name, spoilt, SquadOwnTests.Options());
            Assert.True(list.Problems.Count > 0 ? list.Rows.Count == 0 && list.Problems.All(problem => problem.What.Length > 0 && problem.Mend.Length > 0) : list.Rows.Count + list.HeldBack.Count + list.Skipped.Count > 0);
        }, iter: name.EndsWith("xlsx", StringComparison.Ordinal) ? 600 : 700);
    }

    [Theory]
    [InlineData("Name;No\n", "Vane, Maren;", 9_000)]
    [InlineData("Name;No;Notes\nVane, Maren;4;", "(", 9_000)]
    [InlineData("Name;No;Pos\nVane, Maren;4;", "RL/", 3_000)]
    [InlineData("1. Oswin Vane (prop) – ", "squat 140 x 3 ", 700)]
    [InlineData("1. Oswin Vane ", "van ", 2_400)]
    [InlineData("Name;Squat (kg)\nVane, Maren;", "85x", 3_000)]
    public void Giant_cells_are_read_or_told(string start, string repeated, int times)
    {
        var source = SourceText.OfText("squad", start + string.Concat(Enumerable.Repeat(repeated, times)));
        AssertWhole(source, SquadReader.Read(source, SquadOwnTests.Options()));
    }

    private static void AssertWhole(SourceText source, SquadList list)
    {
        if (list.Problems.Count > 0)
        {
            Assert.All(list.Problems, problem => Assert.True(problem.What.Length > 0 && problem.Mend.Length > 0));
            Assert.Empty(list.Rows);
            return;
        }
        var told = list.Rows.Select(row => row.Line).Concat(list.Skipped.Select(skipped => skipped.Line)).Concat(list.HeldBack.Select(held => held.Line)).ToHashSet();
        var lines = list.Reads.Delimiter is null ? Enumerable.Range(1, source.Lines.Count) : CellTable.Read(source).Rows.Select(row => row.Line);
        Assert.DoesNotContain(lines, line => !told.Contains(line));
        Assert.All(list.Rows, row => Assert.True(row.Name.Length > 0 && row.Ask.All(ask => list.Questions.Any(question => question.Id == ask)), $"{row}"));
        Assert.All(list.Rows, row => Assert.True(row.Mass is null || row.Mass.Kilograms is >= 20 and <= 250));
        Assert.All(list.Questions, question => Assert.True(question.Text.Length > 0 && question.UntilAnswered.Length > 0 && (question.Options.Count > 0 || question.Free is not null)));
        // A detail cut in two by a delimiter is no detail any more.
        var shown = JsonSerializer.Serialize(list, Readable);
        foreach (var detail in Details.Where(detail => source.Text.Contains(detail, StringComparison.Ordinal))) Assert.DoesNotContain(detail, shown, StringComparison.Ordinal);
    }
}
