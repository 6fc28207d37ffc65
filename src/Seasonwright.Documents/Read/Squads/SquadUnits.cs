using System.Text.RegularExpressions;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>What lines above a list say of all its weights ("weights in lb; lifts in lb, 1RM unless x reps").</summary>
/// <param name="Mass">The unit of body masses; null where none is named.</param>
/// <param name="Lift">The unit of lifts.</param>
/// <param name="AreMax">Bare figures are one-repetition maximums.</param>
internal sealed partial record SquadUnits(MassUnit? Mass, MassUnit? Lift, bool AreMax)
{
    private static readonly Regex Masses = EventWords.Words("weights?|body ?weights?|body ?mass|mass|gewicht\\w*|korpergewicht\\w*|poids|peso|vekt|vaegt|vikt|gewichten|waga");

    private static readonly Regex Lifts = EventWords.Words("lifts?|lifting|1 ?rms?|max(?:es|imums?)?|kraftwerte?|hebungen|lasten|charges|cargas|carichi|loft|lyft");

    public static SquadUnits Of(IEnumerable<string> titles)
    {
        var (mass, lift, areMax) = ((MassUnit?)null, (MassUnit?)null, false);
        foreach (var clause in titles.SelectMany(title => title.Split([';', ',', '.', '(', ')', '–'])))
        {
            var folded = SpanToken.Fold(clause);
            areMax |= OneRep().IsMatch(folded);
            if (MassText.UnitsIn(clause) is not [var unit]) continue;
            var (ofMass, ofLift) = (Masses.IsMatch(folded), Lifts.IsMatch(folded));
            if (ofMass || !ofLift) mass ??= unit;
            if (ofLift || !ofMass) lift ??= unit;
        }
        return new(mass, lift, areMax);
    }

    [GeneratedRegex(@"(?<!\p{L})1 ?-?rms?(?!\p{L})", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex OneRep();
}
