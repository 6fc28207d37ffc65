using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Documents.Read;
using Seasonwright.Wire;

namespace Seasonwright.Cli;

/// <summary>Fixture and event lists, and the answers to what they leave open, as the commands take them.</summary>
internal static class ListFiles
{
    /// <returns>The list as text, perhaps with a problem that its reader will tell; null after saying why there is none.</returns>
    public static SourceText? Open(string path, Terminal terminal) => OpenBytes(path, terminal) is { } bytes ? SourceText.OfBytes(Path.GetFileName(path), bytes) : null;

    /// <returns>The list as it is in the file, for a reader that looks into workbooks itself; null after saying why there is none.</returns>
    public static byte[]? OpenBytes(string path, Terminal terminal)
    {
        if (InputFile.Read(path, terminal) is not { } bytes) return null;
        if (!SeasonFile.IsNamed(bytes)) return bytes;
        terminal.Complain("list.is-season", path);
        return null;
    }

    /// <param name="path">Null where no answers are given.</param>
    /// <returns>The answers; null after saying what is wrong with the file.</returns>
    public static Answers? OpenAnswers(string? path, Terminal terminal)
    {
        if (path is null) return Answers.None;
        if (InputFile.Read(path, terminal) is not { } bytes) return null;
        var (answers, problems) = Answers.Read(SourceText.OfBytes(Path.GetFileName(path), bytes));
        Tell(problems, terminal);
        return problems.Count > 0 ? null : answers;
    }

    private static void Tell(IEnumerable<Problem> problems, Terminal terminal)
    {
        foreach (var problem in problems) terminal.Complain(problem);
    }

    /// <summary>Says below a table which lines of the list are no rows; those of one kind are counted.</summary>
    private static void TellSkipped(IEnumerable<Skipped> skipped, Terminal terminal)
    {
        var kinds = skipped.Where(line => line.Kind is not ("blank" or "blank-line")).GroupBy(line => line.Why, StringComparer.Ordinal).ToList();
        if (kinds.Count > 0) terminal.Out.WriteLine();
        foreach (var why in kinds)
        {
            var lines = why.ToList();
            if (lines.Count == 1) terminal.Tell("skipped.line", lines[0].Line, why.Key, OneLine.Of(lines[0].Text));
            else terminal.Tell("skipped.lines", lines.Count, why.Key);
        }
    }

    /// <summary>Gives what was read of a list in the form asked for, and says what is wrong with it or open.</summary>
    /// <inheritdoc cref="Tell(string, IReadOnlyList{Question}, IReadOnlyList{Problem}, bool, Answers, Terminal, string)"/>
    public static Exit Give<TReport, TLine>(TReport report, ListFormat format, Table<TLine> csv, Table<TLine> table, bool isBlocked, Answers answers, Terminal terminal)
        where TReport : IListReport<TLine>
    {
        if (format == ListFormat.Json) terminal.Out.Write(Json.Of(report));
        else if (format == ListFormat.Csv && report.Problems.Count == 0) csv.WriteCsv(report.Lines, terminal.Out);
        else if (report.Lines.Count > 0)
        {
            table.Write(report.Lines, terminal.Out);
            TellSkipped(report.Skipped, terminal);
        }
        return Tell(report.File, report.Questions, report.Problems, isBlocked, answers, terminal);
    }

    /// <summary>Says what is wrong with a list, what it leaves open, what may be answered, and how.</summary>
    /// <param name="name">The list.</param>
    /// <param name="isBlocked">Nothing can be taken before an answer.</param>
    /// <param name="answers">Those given; one that does not fit its question is told.</param>
    /// <param name="where">Begins the ids of the sentences that say where answers are given.</param>
    /// <returns>What this means for the command.</returns>
    public static Exit Tell(string name, IReadOnlyList<Question> questions, IReadOnlyList<Problem> problems, bool isBlocked, Answers answers, Terminal terminal, string where = "questions")
    {
        Tell(problems, terminal);
        Tell(name, questions, isBlocked, answers, terminal, where);
        return problems.Count > 0 ? Exit.BadInput : isBlocked ? Exit.Refused : Exit.Done;
    }

    private static void Tell(string name, IReadOnlyList<Question> questions, bool isBlocked, Answers answers, Terminal terminal, string where)
    {
        if (questions.Count == 0) return;
        var example = questions[0].Offered ?? (questions[0].Options is [var first, ..] ? first.Id : Texts.Say("question.any"));
        terminal.Complain(isBlocked ? $"{where}.blocked" : questions.Count == 1 ? $"{where}.one" : $"{where}.some", name, questions.Count, questions[0].Id, example);
        foreach (var question in questions)
        {
            terminal.Complain(question.Lines.All(line => NamesLine(question.Text, line)) ? "question" : question.Lines.Count == 1 ? "question.line" : "question.lines", question.Id, question.Text, Numbers(question.Lines));
            foreach (var option in question.Options)
                terminal.Complain((option.Id == option.Text, option.Id == question.Offered) switch
                {
                    (true, false) => "question.option",
                    (true, true) => "question.option.offered",
                    (false, false) => "question.option.words",
                    (false, true) => "question.option.words.offered",
                }, option.Id, option.Text);
            if (question.Free is { } free) terminal.Complain("question.free", free);
            terminal.Complain("question.until", question.UntilAnswered);
            if (answers.Find(question.Key, question.Id) is { } given) terminal.Complain("question.unfit", given);
        }
    }

    // "Line 7: ...", "Is line 10 the postponed match of line 5?": not said twice.
    private static bool NamesLine(string text, int line) => text.Split([' ', ':', '(', ')', '.', '?'], StringSplitOptions.RemoveEmptyEntries) is var words
        && words.Zip(words.Skip(1)).Any(pair => string.Equals(pair.First, "line", StringComparison.OrdinalIgnoreCase) && pair.Second == line.ToString(CultureInfo.InvariantCulture));

    /// <summary>The first lines that a question concerns; a reader finds the others with the format for scripts.</summary>
    private static string Numbers(ValueList<int> lines)
    {
        const int most = 12;
        var first = string.Join(", ", lines.Take(most));
        return lines.Count > most ? Texts.Say("question.more-lines", first, lines.Count - most) : first;
    }
}
