using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>Adds or changes a note over any span of days.</summary>
public sealed record SetNote(Note Note) : SeasonEdit
{
    public override string Describe(Season season) => Sentences.Say("did.set-note", Note.Days.First);

    internal override void Decide(SeasonDraft draft)
    {
        draft.Require(Note.Text, $"note/{Note.Id}.text", SeasonDraft.LongestText);
        draft.RequirePossible(Note.Days.First, $"note/{Note.Id}.first");
        draft.RequirePossible(Note.Days.Last, $"note/{Note.Id}.last");
        draft.Set(SeasonFacets.Note, Note.Id, Note);
    }
}
