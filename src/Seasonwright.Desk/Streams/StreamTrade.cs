using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;

namespace Seasonwright.Desk.Streams;

/// <summary>A trade with a state of its own that its facts are read as, and a family of edits of its own.</summary>
/// <param name="read">The facts as a season, a setup.</param>
/// <param name="title">What the list of streams calls it.</param>
internal sealed class StreamTrade<TState, TEdit>(
    Func<FactSet, TState> read, Func<TState, TEdit, Decision> decide, Func<TState, TEdit, string> describe, Func<TState, string> title) : IStreamTrade
    where TEdit : Edit
{
    public Decision Decide(FactSet facts, Edit edit) => edit is TEdit mine
        ? decide(read(facts), mine)
        : new Refused(new ValueList<Refusal>([Refusal.Say("edit-elsewhere", "edit")]));

    public string Describe(FactSet facts, Edit edit) => edit is TEdit mine ? describe(read(facts), mine) : "";

    public string TitleOf(FactSet facts) => title(read(facts));
}
