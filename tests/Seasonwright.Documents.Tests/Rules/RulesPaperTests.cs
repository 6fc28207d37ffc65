using Seasonwright.Documents.Rules;

namespace Seasonwright.Documents.Tests.Rules;

public class RulesPaperTests
{
    /// <summary>docs/rules.md is written by the program. With APPROVE=1 it is written anew.</summary>
    [Fact]
    public void The_page_of_rules_is_what_the_program_says()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Seasonwright.slnx"))) folder = folder.Parent!;
        var page = Path.Combine(folder.FullName, "docs", "rules.md");
        if (Environment.GetEnvironmentVariable("APPROVE") == "1") File.WriteAllText(page, RulesPaper.Write());
        Assert.Equal(File.ReadAllText(page), RulesPaper.Write());
    }
}
