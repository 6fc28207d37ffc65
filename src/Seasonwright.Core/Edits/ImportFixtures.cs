using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Takes a fixture list in, whole or not at all: new matches, and the known ones that it changes or no longer holds.</summary>
/// <param name="Matches">Each as it shall be; matches the list does not touch are not named.</param>
/// <param name="From">The list, in words, for the history.</param>
public sealed record ImportFixtures(ValueList<Match> Matches, string From) : SeasonEdit
{
    public const int Most = 500;

    public override string Describe(Season season, Setup setup)
    {
        var known = Matches.Count(match => season.Match(match.Id) is not null);
        return Sentences.Say("did.import-fixtures", From, Matches.Count - known, known);
    }

    internal override void Decide(SeasonDraft draft)
    {
        if (Matches.Count > Most) draft.Refuse("import-large", "matches", Matches.Count, Most);
        if (Matches.DistinctBy(match => match.Id).Count() != Matches.Count) draft.Refuse("match-twice", "matches");
        draft.Limit(From, "from", SeasonDraft.LongestName);
        if (draft.IsRefused) return;
        foreach (var match in Matches)
        {
            SetMatch.Check(draft, match);
            draft.Set(SeasonFacets.Match, match.Id, match);
        }
        foreach (var match in Matches)
            if (match.Condition?.On is { } on && draft.Find(SeasonFacets.Match, on) is null) draft.Refuse("match-unknown", $"match/{on}", on);
    }
}
