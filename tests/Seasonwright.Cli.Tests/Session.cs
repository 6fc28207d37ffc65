using System.CommandLine.Parsing;
using System.Text;

namespace Seasonwright.Cli.Tests;

/// <summary>A folder of its own and the command line in it, run inside this process with its streams caught.</summary>
public sealed class Session : IDisposable
{
    public Session()
    {
        Folder = Directory.CreateTempSubdirectory("seasonwright-cli-").FullName;
        Directory.CreateDirectory(this["a-folder"]);
        foreach (var file in Directory.GetFiles(Path.Combine(Cases.Folder, "files"))) File.Copy(file, this[Path.GetFileName(file)]);
    }

    public string Folder { get; }

    /// <summary>A file of the folder by its name.</summary>
    public string this[string name] => Path.Combine(Folder, name);

    public void Write(string name, string text, bool append)
    {
        if (append) File.AppendAllText(this[name], text);
        else File.WriteAllText(this[name], text);
    }

    /// <summary>Runs one line as it would be typed in the folder, without the program's name.</summary>
    /// <returns>What was answered, with the folder's own name left out.</returns>
    public Answer Run(string line)
    {
        var before = Contents();
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var exit = CommandLine.Run([.. CommandLineParser.SplitCommandLine(line).Select(Placed)], new Terminal(output, error), new Noon());
        var answer = new Answer(exit, WithoutFolders(output), WithoutFolders(error));
        // Readers of lists show what they read beside what is open, the gym's figures stand beside their cautions; every other command says one or the other.
        var reads = new[] { "fixtures ", "events ", "squad ", "import ", "one-rm ", "loads ", "velocity " }.Any(list => line.StartsWith(list, StringComparison.Ordinal) || line.Contains($" --{list}", StringComparison.Ordinal));
        if (exit == 0)
        {
            if (!reads) Assert.Empty(answer.Error);
        }
        else
        {
            Assert.NotEmpty(answer.Error);
            if (!reads) Assert.Empty(answer.Output);
            Assert.Equal(before, Contents());
        }
        return answer;
    }

    /// <summary>Every file with its bytes, left-over temporary ones too.</summary>
    public SortedDictionary<string, string> Contents()
    {
        var contents = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories)) contents[file] = Convert.ToHexString(File.ReadAllBytes(file));
        return contents;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    /// <summary>The tests share one process and so one current folder: files are named in full.</summary>
    private string Placed(string argument) =>
        argument.StartsWith("./", StringComparison.Ordinal) ? this[argument[2..]]
        : argument.StartsWith("fixtures/", StringComparison.Ordinal) || argument.StartsWith("events/", StringComparison.Ordinal) || argument.StartsWith("workbooks/", StringComparison.Ordinal) ? Path.Combine(Cases.Data, argument)
        : argument;

    private string WithoutFolders(StringWriter text) =>
        text.ToString().Replace(Folder + "/", "", StringComparison.Ordinal).Replace(Cases.Data + "/", "", StringComparison.Ordinal);

    public sealed record Answer(int Exit, string Output, string Error)
    {
        /// <summary>Results as they are, complaints behind "! ", any exit code but 0 behind "= ".</summary>
        public string Shown
        {
            get
            {
                var text = new StringBuilder(Output);
                foreach (var line in Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)) text.Append("! ").Append(line).Append('\n');
                if (Exit != 0) text.Append("= ").Append(Exit).Append('\n');
                return text.ToString();
            }
        }
    }

    /// <summary>The sessions' own day: what says a date says the same one each time.</summary>
    private sealed class Noon : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => new(2027, 10, 18, 12, 0, 0, TimeSpan.Zero);
    }
}
