using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Cli;

/// <summary>The kinds of argument and option the commands share. What cannot be read is told with the forms that can.</summary>
internal static class Parameters
{
    public static Argument<string> Season() => File("FILE", "help.season-file");

    public static Argument<string> File(string name, string help)
    {
        var file = new Argument<string>(name) { Description = Texts.Say(help), HelpName = name };
        file.Validators.Add(result => RefuseEmpty(result, name));
        return file;
    }

    public static Option<string> Out(string help = "help.out") => Path(new Option<string>("--out") { Description = Texts.Say(help), HelpName = "FILE", Required = true });

    /// <summary>A file or folder that may be named.</summary>
    public static Option<string?> Path(string name, string help, string helpName) => Path(new Option<string?>(name) { Description = Texts.Say(help), HelpName = helpName });

    public static Option<string?> Answers() => Path("--answers", "help.answers", "FILE.json");

    public static Option<string?> Data() => Path("--data", "help.data", "DIR");

    public static Option<DateOnly> Day(string name, string help) => new(name)
    {
        Description = Texts.Say(help),
        HelpName = "DATE",
        Required = true,
        CustomParser = argument => Read<DateOnly>(argument, name, "arguments.date",
            text => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
                && Frame.PossibleDays.Contains(day) ? day : null,
            Frame.PossibleDays.First.Year, Frame.PossibleDays.Last.Year),
    };

    public static Option<int> Weeks(string name, string help) => new(name)
    {
        Description = Texts.Say(help, Frame.MostWeeks),
        HelpName = "N",
        Required = true,
        CustomParser = argument => Read<int>(argument, name, "arguments.weeks",
            text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var weeks) && weeks is >= 1 and <= Frame.MostWeeks ? weeks : null,
            Frame.MostWeeks),
    };

    /// <summary>The number of a week, from 1.</summary>
    public static Option<int?> WeekNumber(string name, string help) => new(name)
    {
        Description = Texts.Say(help),
        HelpName = "N",
        CustomParser = argument => Read<int>(argument, name, "arguments.week",
            text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var week) && week >= 1 ? week : null),
    };

    /// <summary>A whole number from 0 up to a most.</summary>
    public static Option<int?> Count(string name, string help, int most) => new(name)
    {
        Description = Texts.Say(help, most),
        HelpName = "N",
        CustomParser = argument => Read<int>(argument, name, "arguments.count",
            text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= most ? count : null, most),
    };

    /// <summary>A whole number from 1 up to a most, which both sentences name.</summary>
    public static Option<int?> Whole(string name, string help, string complaint, int most) => new(name)
    {
        Description = Texts.Say(help, most),
        HelpName = "N",
        CustomParser = argument => Read<int>(argument, name, complaint,
            text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= most ? number : null, most),
    };

    /// <summary>A weight above 0, its unit aside.</summary>
    public static Option<decimal> Weight(string name, string help) => Number(name, help, "KG", number => number > 0, "arguments.weight");

    /// <param name="more">What the sentences hold behind the name and what was given.</param>
    public static Option<decimal> Number(string name, string help, string helpName, Func<decimal, bool> isPossible, string complaint, params object?[] more) => new(name)
    {
        Description = Texts.Say(help, more),
        HelpName = helpName,
        Required = true,
        CustomParser = argument => Read<decimal>(argument, name, complaint, text => Number(text, isPossible), more),
    };

    /// <summary>Numbers with commas between, one at least.</summary>
    /// <inheritdoc cref="Number(string, string, string, Func{decimal, bool}, string, object?[])"/>
    public static Option<IReadOnlyList<decimal>> Numbers(string name, string help, string helpName, Func<decimal, bool> isPossible, string complaint, params object?[] more) => new(name)
    {
        Description = Texts.Say(help, more),
        HelpName = helpName,
        Required = true,
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = argument =>
        {
            var numbers = new List<decimal>();
            foreach (var text in argument.Tokens.Single().Value.Split(','))
            {
                if (Number(text.Trim(), isPossible) is { } number)
                {
                    numbers.Add(number);
                    continue;
                }
                argument.AddError(Texts.Say(complaint, [name, text.Trim(), .. more]));
                break;
            }
            return numbers;
        },
    };

    private static decimal? Number(string text, Func<decimal, bool> isPossible) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && isPossible(number) ? number : null;

    /// <summary>One of a few whole numbers.</summary>
    public static Option<int?> OneOf(string name, string help, IReadOnlyList<int> numbers, int otherwise) => new(name)
    {
        Description = Texts.Say(help, otherwise),
        HelpName = string.Join('|', numbers),
        CustomParser = argument => Read<int>(argument, name, "arguments.word",
            text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && numbers.Contains(number) ? number : null, string.Join(", ", numbers)),
    };

    /// <summary>A text that may be given several times.</summary>
    public static Option<string[]> Several(string name, string help, string helpName) => new(name) { Description = Texts.Say(help), HelpName = helpName };

    /// <summary>One of a few words: the names of an enum, in small letters.</summary>
    /// <param name="otherwise">What the help says holds without it.</param>
    public static Option<T?> Word<T>(string name, string help, T otherwise)
        where T : struct, Enum => Word<T>(name, help, Word(otherwise));

    /// <inheritdoc cref="Word{T}(string, string, T)"/>
    /// <param name="words">What the help's sentence holds.</param>
    public static Option<T?> Word<T>(string name, string help, params object?[] words)
        where T : struct, Enum
    {
        var names = Enum.GetValues<T>().ToDictionary(Word, StringComparer.OrdinalIgnoreCase);
        return new Option<T?>(name)
        {
            Description = Texts.Say(help, words),
            HelpName = names.Count <= 4 ? string.Join('|', names.Keys) : "DAY",
            CustomParser = argument => Read<T>(argument, name, "arguments.word",
                text => names.TryGetValue(text, out var value) ? value : null, string.Join(", ", names.Keys)),
        };
    }

    private static Option<T> Path<T>(Option<T> option)
    {
        option.Validators.Add(result => RefuseEmpty(result, option.Name));
        return option;
    }

    private static void RefuseEmpty(SymbolResult result, string name)
    {
        if (result.Tokens is [{ Value: "" }]) result.AddError(Texts.Say("arguments.empty", name));
    }

    private static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();

    private static T Read<T>(ArgumentResult argument, string name, string complaint, Func<string, T?> read, params object?[] more)
        where T : struct
    {
        var text = argument.Tokens.Single().Value;
        if (read(text) is { } value) return value;
        argument.AddError(Texts.Say(complaint, [name, text, .. more]));
        return default;
    }
}
