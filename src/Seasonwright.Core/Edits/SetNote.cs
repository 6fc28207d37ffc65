using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Adds or changes a note over any span of days.</summary>
public sealed record SetNote(Note Note) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.set-note", Note.Days.First);

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, Note);
        draft.Set(SeasonFacets.Note, Note.Id, Note);
    }

    internal static void Check(Draft draft, Note note)
    {
        draft.Require(note.Text, $"note/{note.Id}.text", SeasonDraft.LongestText);
        draft.RequirePossible(note.Days.First, $"note/{note.Id}.first");
        draft.RequirePossible(note.Days.Last, $"note/{note.Id}.last");
    }
}
