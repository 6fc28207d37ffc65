using System.Reflection;
using System.Text.RegularExpressions;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>What one rule says to small plans, line by line: the class of a table is named after its rule.</summary>
public abstract partial class RuleTable
{
    /// <summary>"weekly-ramp" for WeeklyRampTests.</summary>
    public string Rule => Words().Replace(GetType().Name[..^"Tests".Length], "-$0").ToLowerInvariant();

    protected void Check(string plan, string says, string figures) => Assert.Equal(says, Plans.Say(Rule, plan, figures));

    /// <summary>Every line of every table.</summary>
    internal static IEnumerable<(string Rule, string Plan, string Says, string Figures)> Lines =>
        from type in typeof(RuleTable).Assembly.GetTypes()
        where type.IsSubclassOf(typeof(RuleTable))
        let rule = ((RuleTable)Activator.CreateInstance(type)!).Rule
        from line in type.GetMethod("Says")!.GetCustomAttributes<InlineDataAttribute>()
        select (rule, (string)line.Data[0]!, (string)line.Data[1]!, line.Data.Length > 2 ? (string)line.Data[2]! : "");

    [GeneratedRegex("(?<!^)[A-Z]", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Words();
}
