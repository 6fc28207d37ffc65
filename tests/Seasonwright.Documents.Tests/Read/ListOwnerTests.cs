using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>A list of one team's matches that says it is another team's is not taken without a word; one that says nothing, or names ours, is.</summary>
public class ListOwnerTests
{
    private const string Opponents = "Date,Opponent,H/A\n2026-09-05,Brovik,H\n2026-09-12,Turnes,A\n";

    private static FixtureList Read(string text, string team = "Harbour Vale", string name = "list.csv", params (string, string)[] answers) =>
        FixtureReader.Read(SourceText.OfText(name, text), new FixtureOptions(team, answers.Aggregate(Answers.None, (all, answer) => all.With(answer.Item1, answer.Item2))));

    private static string InEveryRow(string team) => $"Date,Team,Opponent,H/A\n2026-09-05,{team},Brovik,H\n2026-09-12,{team},Turnes,A\n";

    [Theory]
    [InlineData("Kalnes HK\n" + Opponents, "Kalnes HK")]
    [InlineData("Fixtures of Kalnes 2026/27\n" + Opponents, "Kalnes")]
    [InlineData("Spielplan Kalnes;;\nDatum;Gegner;H/A\n5.9.2026;Brovik;H\n", "Kalnes")]
    [InlineData("Kalnes HK fixtures 2026/27\n\nSat 5 Sep 2026 18:00 vs Brovik\nSat 12 Sep 2026 18:00 @ Turnes\n", "Kalnes HK")]
    public void A_title_that_names_another_club_is_asked_about(string text, string owner) => Asked(text, owner);

    [Fact]
    public void So_is_one_club_in_every_row() => Asked(InEveryRow("Kalnes HK"), "Kalnes HK");

    [Fact]
    public void And_a_list_that_has_our_team_as_an_opponent() => Asked(Opponents.Replace("Turnes", "Harbour Vale", StringComparison.Ordinal), "Line 3");

    private static void Asked(string text, string says)
    {
        var open = Read(text);
        var question = Assert.Single(open.Questions, question => question.Kind == "Q-own");
        Assert.Contains(says, question.Text, StringComparison.Ordinal);
        Assert.Contains("Harbour Vale", question.Text, StringComparison.Ordinal);
        Assert.True(open.IsBlocked);
        Assert.NotEmpty(open.Rows);
        var ours = Read(text, answers: (question.Key, "ours"));
        Assert.False(ours.IsBlocked);
        Assert.Equal(open.Rows.Count, ours.Rows.Count);
        var other = Read(text, answers: (question.Key, "other"));
        Assert.Equal("other-club", Assert.Single(other.Problems).Id);
        Assert.Equal((0, "other"), (other.Rows.Count, Assert.Single(other.Answered).Answer));
    }

    [Theory]
    [InlineData(Opponents)]
    [InlineData("Harbour Vale\n" + Opponents)]
    [InlineData("Harbour Vale Handball – fixtures 2026/27\n" + Opponents)]
    [InlineData("HV women, fixtures\n" + Opponents)]
    [InlineData("Fixtures 2026/27\n" + Opponents)]
    [InlineData("Women's handball: autumn fixtures\n" + Opponents)]
    [InlineData("Premier Handball League fixtures\n" + Opponents)]
    [InlineData("Provisional!\n" + Opponents)]
    public void A_list_that_names_no_club_or_ours_is_not(string text) => NotAsked(text);

    [Theory]
    [InlineData("Harbour Vale")]
    [InlineData("Harbor Vale")]
    [InlineData("Harbour Vale 1")]
    [InlineData("Women 1")]
    [InlineData("1st XV")]
    [InlineData("U17")]
    [InlineData("First team")]
    public void Nor_one_side_of_ours_in_every_row(string side) => NotAsked(InEveryRow(side));

    [Fact]
    public void Nor_a_list_in_whose_name_ours_stands() => NotAsked("Northern handball fixtures\n" + Opponents, "harbour-vale.csv");

    private static void NotAsked(string text, string name = "list.csv")
    {
        var read = Read(text, name: name);
        Assert.DoesNotContain(read.Questions, question => question.Kind == "Q-own");
        Assert.False(read.IsBlocked);
        Assert.Equal(2, read.Rows.Count);
    }

    [Fact]
    public void The_samples_are_their_own_teams()
    {
        Assert.DoesNotContain(FixtureCases.Read("samples/fixtures-02-semicolon-cp1252.csv", "Universität Grünfurt").Questions, question => question.Kind == "Q-own");
        Assert.Contains(FixtureCases.Read("samples/fixtures-02-semicolon-cp1252.csv", "Harbour Vale").Questions, question => question.Kind == "Q-own");
    }
}
