using System.Text.RegularExpressions;

namespace Seasonwright.Cli.Tests;

/// <summary>
/// The approved sessions: files in which a line that begins with "$ " is typed and the lines below it are what is answered.
/// What is typed is the program, or <c>echo 'TEXT' > ./FILE</c> (with <c>>></c> behind what the file holds).
/// </summary>
public static partial class Cases
{
    private const string Prompt = "$ seasonwright";

    public static string Root { get; } = Above(AppContext.BaseDirectory);

    /// <summary>The lists that others wrote, by capability.</summary>
    public static string Data { get; } = Path.Combine(Root, "tests", "Cases");

    public static string Folder { get; } = Path.Combine(Data, "cli");

    public static TheoryData<string> All => [.. Directory.GetFiles(Folder, "*.session").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    /// <summary>Types every line of a session again.</summary>
    /// <returns>The session as it came out now.</returns>
    public static string Replay(string session)
    {
        using var folder = new Session();
        var played = new List<string>();
        foreach (var line in session.Split('\n'))
        {
            if (line.StartsWith('#') || (line.Length == 0 && (played.Count == 0 || played[^1].StartsWith('#')))) played.Add(line + "\n");
            if (Echo().Match(line) is { Success: true } echo)
            {
                folder.Write(echo.Groups["file"].Value, echo.Groups["text"].Value + "\n", append: echo.Groups["append"].Success);
                played.Add(line + "\n");
            }
            if (line.StartsWith(Prompt, StringComparison.Ordinal)) played.Add($"{line}\n{folder.Run(line[Prompt.Length..].Trim()).Shown}\n");
        }
        return string.Concat(played).TrimEnd('\n') + "\n";
    }

    [GeneratedRegex("""^\$ echo '(?<text>[^']*)' >(?<append>>)? \./(?<file>\S+)$""", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Echo();

    private static string Above(string folder) =>
        File.Exists(Path.Combine(folder, "Seasonwright.slnx")) ? folder : Above(Path.GetDirectoryName(folder.TrimEnd('/')) ?? throw new InvalidOperationException("The solution is not above the tests."));
}
