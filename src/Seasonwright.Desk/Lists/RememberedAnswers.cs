using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;

namespace Seasonwright.Desk.Lists;

/// <summary>What a person has answered about a team's lists, so that the next state of a list does not ask again.</summary>
public static class RememberedAnswers
{
    /// <summary>The answers kept so far.</summary>
    public static async Task<Answers> AnswersAsync(this Workspace workspace, Actor actor, TeamId team)
    {
        var kept = (await workspace.PreferencesAsync(actor)).GetValueOrDefault(Key(team));
        // Only a convenience is lost when it cannot be read: the question is then asked again.
        return kept is null ? Answers.None : Answers.Read(SourceText.OfText("answers", kept)).Answers;
    }

    /// <summary>
    /// Keeps the answers that hold for other lists too. What is about one file alone (its date order, its years) is asked again, and so is who is
    /// meant: those answers are names of people, which are kept nowhere but with the people.
    /// </summary>
    public static Task RememberAsync(this Workspace workspace, Actor actor, TeamId team, Answers answers)
    {
        var lasting = answers.All.Where(answer => answer.Key == "Q-team" || answer.Key.Contains(':', StringComparison.Ordinal) && !answer.Key.StartsWith("Q-who:", StringComparison.Ordinal))
            .Aggregate(Answers.None, (kept, answer) => kept.With(answer.Key, answer.Value));
        return workspace.PreferAsync(actor, Key(team), lasting.ToJson());
    }

    /// <summary>Forgets what anybody answered about a team's lists.</summary>
    internal static Task ForgetAnswersAsync(this Workspace workspace, TeamId team) => workspace.Folder.Preferences.RemoveAsync(Key(team));

    private static string Key(TeamId team) => $"lists.{team}";
}
