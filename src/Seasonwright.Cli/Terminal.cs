using System.Text;
using Seasonwright.Documents.Read;
using Seasonwright.Wire;

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

    /// <summary>Says what is wrong with a file, where, and how to mend it.</summary>
    public void Complain(string file, WireProblem problem) => Complain(problem.Line is null ? "in.problem" : "in.problem.line", file, problem);

    /// <inheritdoc cref="Complain(string, WireProblem)"/>
    public void Complain(Problem problem) => Complain(problem.File, new WireProblem(problem.Line, problem.Column, problem.What, problem.Mend));

    public void Tell(string id, params object?[] words) => Out.WriteLine(Texts.Say(id, words));

    private static StreamWriter Writer(Stream stream) => new(stream, new UTF8Encoding(false)) { NewLine = "\n" };
}
