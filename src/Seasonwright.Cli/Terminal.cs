using System.Text;

namespace Seasonwright.Cli;

/// <summary>Where a command writes: results to <see cref="Out"/>, everything that went wrong to <see cref="Error"/>. UTF-8, LF.</summary>
internal sealed record Terminal(TextWriter Out, TextWriter Error)
{
    public static Terminal OfThisProcess() => new(Writer(Console.OpenStandardOutput()), Writer(Console.OpenStandardError()));

    /// <summary>Says a sentence about the input on the error stream, behind the results that stand already.</summary>
    public void Complain(string id, params object?[] words)
    {
        Out.Flush();
        Error.WriteLine(Texts.Say(id, words));
    }

    public void Tell(string id, params object?[] words) => Out.WriteLine(Texts.Say(id, words));

    private static StreamWriter Writer(Stream stream) => new(stream, new UTF8Encoding(false)) { NewLine = "\n" };
}
