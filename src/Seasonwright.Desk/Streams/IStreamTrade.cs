using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;

namespace Seasonwright.Desk.Streams;

/// <summary>What a stream is about: how its edits are decided and told. One per kind of stream.</summary>
public interface IStreamTrade
{
    Decision Decide(FactSet facts, Edit edit);

    /// <summary>One line for the history, in the words of the state before the edit.</summary>
    string Describe(FactSet facts, Edit edit);

    /// <summary>What the list of streams calls it.</summary>
    string TitleOf(FactSet facts);
}
