using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>A session in a sentence: "Intervals, Tue 5 Oct 2027, evening". The words are made when the sentence is.</summary>
internal sealed record NamedSession(Session Session)
{
    public override string ToString() => SessionWords.Of(Session);
}
