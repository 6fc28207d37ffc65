using Seasonwright.Core;

namespace Seasonwright.Documents.HandOut.Cards;

/// <summary>One athlete's session on paper.</summary>
/// <param name="Number">On the shirt; empty where there is none.</param>
/// <param name="WarmUp">What gets ready, in one line; empty for none.</param>
/// <param name="Lines">What is written down while it is done.</param>
/// <param name="Notes">What the athlete has to know first.</param>
/// <param name="IsModified">Something is otherwise than for the others. No card says why.</param>
public sealed record Card(string Number, string Name, string WarmUp, ValueList<CardLine> Lines, ValueList<string> Notes, bool IsModified);

/// <summary>One exercise of a card.</summary>
/// <param name="Place">"A", or in a part of several "A1".</param>
/// <param name="Sets">"4 x 5".</param>
/// <param name="Weight">"100 kg", or how hard it should be where no weight is known.</param>
/// <param name="Plates">"25 + 15 a side"; empty without sides.</param>
/// <param name="PerSide">The masses of them, heaviest first.</param>
/// <param name="How">Tempo, rest, note; empty for none.</param>
/// <param name="Boxes">To write in, one a set.</param>
/// <param name="Instead">It is done in the place of something else.</param>
public sealed record CardLine(string Place, string Exercise, string Sets, string Weight, string Plates, ValueList<decimal> PerSide, string How, int Boxes, bool Instead);
