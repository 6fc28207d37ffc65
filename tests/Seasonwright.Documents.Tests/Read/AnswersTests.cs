using Seasonwright.Documents.Read;

namespace Seasonwright.Documents.Tests.Read;

public class AnswersTests
{
    [Fact]
    public void The_JSON_form_is_read_and_written()
    {
        var (answers, problems) = Answers.Read(SourceText.OfText("answers.json", "{ \"Q-order\": \"day-first\" }"));
        Assert.Empty(problems);
        Assert.Equal("day-first", answers.Find("Q-order", "Q-order"));
        Assert.Equal(answers.All, Answers.Read(SourceText.OfText("again", answers.ToJson())).Answers.All);
    }

    [Theory]
    [InlineData("{ \"Q-order\": 1 }", "answers-value")]
    [InlineData("[]", "answers-form")]
    [InlineData("{ \"Q-order\": ", "json")]
    [InlineData("", "empty")]
    public void Anything_else_is_a_problem(string json, string id) => Assert.Equal(id, Assert.Single(Answers.Read(SourceText.OfText("answers.json", json)).Problems).Id);
}
