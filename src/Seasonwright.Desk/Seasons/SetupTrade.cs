using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Seasons;

/// <summary>Edits of a team's setup.</summary>
internal sealed class SetupTrade(TeamId id) : IStreamTrade
{
    public Decision Decide(FactSet facts, Edit edit) => edit is SetupEdit mine
        ? Decider.Decide(new Setup(id, facts), mine)
        : new Refused(new ValueList<Refusal>([Refusal.Say("edit-elsewhere", "edit")]));

    public string Describe(FactSet facts, Edit edit) => edit is SetupEdit mine ? mine.Describe(new Setup(id, facts)) : "";

    public string TitleOf(FactSet facts) => new Setup(id, facts).TeamName;
}
