namespace Seasonwright.Cli.Tests;

/// <summary>Files that cannot be read and places that cannot be written: a sentence, exit code 2, and every file as it was.</summary>
[System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
public sealed class FaultTests : IDisposable
{
    private readonly Session session = new();

    public FaultTests()
    {
        session.Run("start --from 2027-07-05 --weeks 10 --team \"Harbour Vale\" --out ./season.json");
        session.Write("edits.jsonl", """{"edit":"setWeekLoad","first":1,"last":3,"load":2400}""", append: false);
    }

    /// <summary>Permissions do not bind root; without these capabilities they do.</summary>
    private static string[] Bound => Environment.UserName == "root" ? ["setpriv", "--bounding-set", "-dac_override,-dac_read_search"] : [];

    public void Dispose() => session.Dispose();

    public static TheoryData<string> Readers =>
    [
        "show {0}", "apply {0} ./edits.jsonl --out ./new.json", "apply ./season.json {0} --out ./new.json", "redate {0} --from 2027-07-12 --out ./new.json",
        "fixtures {0} --team Vale", "fixtures ./short.csv --team Vale --answers {0}", "fixtures ./short.csv --team Vale --update {0}",
        "events {0}", "events ./short-breaks.csv --answers {0}", "events ./short-breaks.csv --season {0}", "events ./short-breaks.csv --update {0}", "velocity {0} --threshold 0.17",
        "start --from 2027-07-05 --weeks 9 --team Vale --fixtures {0} --out ./new.json", "start --from 2027-07-05 --weeks 9 --team Vale --events {0} --out ./new.json",
    ];

    [Theory]
    [MemberData(nameof(Readers))]
    public void A_file_of_no_bytes_is_told(string line)
    {
        session.Write("empty", "", append: false);
        var answer = session.Run(string.Format(System.Globalization.CultureInfo.InvariantCulture, line, "./empty"));
        Assert.Equal((2, "empty is empty (0 bytes). Take a copy that holds something. Nothing was written.\n"), (answer.Exit, answer.Error));
    }

    [Theory]
    [MemberData(nameof(Readers))]
    public void A_file_that_may_not_be_read_is_told(string line)
    {
        session.Write("closed", "{}", append: false);
        File.SetUnixFileMode(session["closed"], UnixFileMode.None);
        var arguments = System.CommandLine.Parsing.CommandLineParser.SplitCommandLine(string.Format(System.Globalization.CultureInfo.InvariantCulture, line, "./closed"));
        var (exit, output, error) = BuiltProgram.RunUnder(session, Bound, [.. arguments]);
        Assert.Equal((2, ""), (exit, output));
        Assert.StartsWith("./closed cannot be read: ", error, StringComparison.Ordinal);
        Assert.False(File.Exists(session["new.json"]));
    }

    [Theory]
    [InlineData("{\"edit\":\"publish\",\"name\":\"Größe\"}", "iso-8859-1", "edits.jsonl, line 2, column 29: the text is not UTF-8 there.")]
    [InlineData("{\"edit\":\"publish\",\"name\":\"x\"}", "utf-16", "edits.jsonl, line 2, column 1: the text is not UTF-8 there.")]
    public void A_list_of_edits_that_is_not_UTF_8_is_told_with_its_place(string line, string encoding, string said)
    {
        byte[] bytes = [.. "# a remark\n"u8, .. System.Text.Encoding.GetEncoding(encoding).GetPreamble(), .. System.Text.Encoding.GetEncoding(encoding).GetBytes(line)];
        File.WriteAllBytes(session["edits.jsonl"], bytes);
        var answer = session.Run("apply ./season.json ./edits.jsonl --out ./season.json");
        Assert.Equal(2, answer.Exit);
        Assert.StartsWith(said, answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_protected_is_not_replaced()
    {
        File.SetUnixFileMode(session["season.json"], UnixFileMode.UserRead);
        foreach (var line in new[] { "apply ./season.json ./edits.jsonl", "redate ./season.json --from 2027-07-12", "demo --anchor 2027-07-05", "start --from 2027-07-05 --weeks 3 --team Vale" })
        {
            var answer = session.Run($"{line} --out ./season.json");
            Assert.Equal((2, "season.json is protected against writing. Nothing was written. Take the protection off, or name another file.\n"), (answer.Exit, answer.Error));
        }
    }

    [Fact]
    public void In_a_folder_that_is_protected_nothing_is_written()
    {
        Directory.CreateDirectory(session["shelf"]);
        File.SetUnixFileMode(session["shelf"], UnixFileMode.UserRead | UnixFileMode.UserExecute);
        var (exit, output, error) = BuiltProgram.RunUnder(session, Bound, "apply", "season.json", "edits.jsonl", "--out", "shelf/new.json");
        Assert.Equal((2, ""), (exit, output));
        Assert.StartsWith("shelf/new.json cannot be written: ", error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(session["shelf"]));
    }

    /// <summary>The system itself refuses a call of the program's (strace injects the error): a full disk, a failing one, a name that cannot be changed.</summary>
    [Theory]
    [InlineData("pwrite64", "ENOSPC")]
    [InlineData("pwrite64", "EIO")]
    [InlineData("rename", "EIO")]
    public void When_the_disk_refuses_the_old_file_stays_and_nothing_is_left_over(string call, string error)
    {
        var before = session.Contents();
        var trace = Path.GetTempFileName();
        try
        {
            var (exit, output, told) = BuiltProgram.RunUnder(session, ["strace", "-f", "-qq", "-o", trace, "-e", $"trace=openat,{call}", "-e", $"inject={call}:error={error}"], "apply", "season.json", "edits.jsonl", "--out", "season.json");
            var calls = File.ReadAllLines(trace);
            Assert.Contains(calls, line => line.Contains("INJECTED", StringComparison.Ordinal));
            // Every write is on the disk when it returns.
            Assert.Contains(calls, line => line.Contains(".tmp\", ", StringComparison.Ordinal) && line.Contains("SYNC", StringComparison.Ordinal));
            Assert.Equal((2, ""), (exit, output));
            Assert.StartsWith("season.json cannot be written: ", told, StringComparison.Ordinal);
            Assert.Equal(before, session.Contents());
        }
        finally
        {
            File.Delete(trace);
        }
    }

    [Fact]
    public void When_the_reader_of_the_result_cannot_take_it_that_is_told()
    {
        var (exit, _, error) = BuiltProgram.RunUnder(session, ["bash", "-c", "\"$@\" > /dev/full", "-"], "show", "season.json");
        Assert.Equal(2, exit);
        Assert.StartsWith("The result could not be handed on: ", error, StringComparison.Ordinal);
    }
}
