using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Removes a note.</summary>
public sealed record RemoveNote(NoteId Note) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.remove-note", season.Facts.Find(SeasonFacets.Note, Note)?.Text);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Note, Note) is null) draft.Refuse("note-unknown", $"note/{Note}", Note);
        draft.Remove(SeasonFacets.Note, Note);
    }
}
