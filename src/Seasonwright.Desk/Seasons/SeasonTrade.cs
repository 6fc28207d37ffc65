using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Seasons;

/// <summary>Edits of a season.</summary>
internal sealed class SeasonTrade(SeasonId id) : IStreamTrade
{
    public Decision Decide(FactSet facts, Edit edit) => edit is SeasonEdit mine
        ? Decider.Decide(new Season(id, facts), mine)
        : new Refused(new ValueList<Refusal>([Refusal.Say("edit-elsewhere", "edit")]));

    public string Describe(FactSet facts, Edit edit) => edit is SeasonEdit mine ? mine.Describe(new Season(id, facts)) : "";

    public string TitleOf(FactSet facts)
    {
        var team = new Season(id, facts).Team;
        return team.Title ?? team.Name;
    }
}
