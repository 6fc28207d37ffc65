using Seasonwright.Core.Edits;

namespace Seasonwright.Wire.Tests;

public class EditsPageTests
{
    [Fact]
    public void The_page_lists_every_edit_with_an_example()
    {
        Assert.Equal(EditNames.All.Keys.Order(StringComparer.Ordinal), EditsPage.Lines.Select(line => line.Heading).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
        foreach (var heading in EditsPage.Lines.GroupBy(line => line.Heading, StringComparer.Ordinal))
            Assert.Contains(heading, line => line.Line.StartsWith($$"""{"edit":"{{heading.Key}}",""", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_line_is_accepted_or_refused_as_the_page_says()
    {
        var told = new Told();
        told.Do(Told.Start);
        foreach (var (_, line, refusal) in EditsPage.Lines)
        {
            var edit = EditLines.Read(line, told.Season, out var problem);
            Assert.True(problem is null, $"{line}\n{problem}");
            var decision = told.Do(edit!);
            var reasons = (decision as Refused)?.Reasons.Select(reason => reason.Sentence) ?? [];
            Assert.True(refusal is null ? decision is Accepted { Step.IsNothing: false } : reasons.SequenceEqual([refusal], StringComparer.Ordinal), $"{line}\n{string.Join('\n', reasons)}");
        }
    }

    [Fact]
    public void Every_edit_reads_back_as_it_was_written()
    {
        var season = Told.Page().Season;
        foreach (var (_, line, _) in EditsPage.Lines)
        {
            var edit = EditLines.Read(line, season, out _);
            Assert.Equal(edit, LogText.ReadEdit(LogText.Of(edit!)));
        }
    }
}
