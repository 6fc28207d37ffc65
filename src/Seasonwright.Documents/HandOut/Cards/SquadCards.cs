using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Cards;

/// <summary>A session's cards for the whole squad, as content.</summary>
/// <param name="Title">"Legs heavy".</param>
/// <param name="When">"Tue 12 Oct 2027, 08:30".</param>
/// <param name="Cards">Of everybody who takes part, in the order of the squad.</param>
/// <param name="Without">Names of those whose session it is and who take no part.</param>
public sealed record SquadCards(SharedSeason Shared, Session Session, string Title, string When, ValueList<Card> Cards, ValueList<string> Without)
{
    /// <param name="players">The squad in the order its cards are handed out.</param>
    public static SquadCards Of(SharedSeason shared, Session session, IReadOnlyCollection<Player> players)
    {
        var (season, setup) = (shared.Season, shared.Setup);
        var workout = session.Workout is { } id ? season.Workout(id) : null;
        var work = AthleteWork.Of(season, setup, session, players, RackLoads.Of(setup.Gym));
        var names = players.ToDictionary(player => player.Id);
        return new(shared, session, PlainText.Clean(workout?.Name ?? SessionWords.Name(session)),
            Say("card.when", session.Day.Long(setup.Locale), session.Start?.Iso() ?? Sentences.Say($"slot.{session.Slot}")),
            work.Where(one => one.IsLifting || one.AsksFirst).Select(one => CardOf(one, names[one.Person].Athlete, workout!, setup)).ToValueList(),
            work.Where(one => !one.IsLifting && !one.AsksFirst).Select(one => PlainText.Clean(names[one.Person].Athlete.Name)).ToValueList());
    }

    private static Card CardOf(AthleteWork work, Athlete athlete, Workout workout, Setup setup)
    {
        var locale = setup.Locale;
        var ready = string.Join(" · ", work.Lines.Where(line => !line.Part.IsWork).Select(line => $"{line.Exercise.Name} {WorkWords.Sets(line.Prescription, line.Exercise)}"));
        return new(PlainText.Clean(athlete.Number ?? ""), PlainText.Clean(athlete.Name), PlainText.Clean(ready),
            work.Lines.Where(line => line.Part.IsWork).Select(line => LineOf(line, workout.PlaceOf(line.Item), locale)).ToValueList(), Notes(work).ToValueList(), work.IsModified);
    }

    private static IEnumerable<string> Notes(AthleteWork work)
    {
        if (work.AsksFirst) yield return Say("card.ask-first");
        if (work.MostMinutes is { } most) yield return Say("card.most-minutes", most.Value);
        if (work.IsMinor) yield return Say("card.minor");
        if (work.Lines.Any(line => line.Instead)) yield return Say("card.star");
    }

    private static CardLine LineOf(WorkLine line, string place, LocaleSettings locale)
    {
        string?[] how = [line.Prescription.Tempo is { } tempo ? Say("work.tempo", tempo) : null, line.Part.Rest > 0 ? Rest(line.Part, locale) : null, line.Prescription.Effort.Kind == EffortKind.Velocity && line.Load.Made is not null ? WorkWords.Of(line.Prescription.Effort, locale) : null, line.Instead ? null : line.Item.Note];
        return new(place, PlainText.Clean(line.Exercise.Name), WorkWords.Sets(line.Prescription, line.Exercise), WorkWords.Of(line.Load, line.Exercise, line.Prescription, locale),
            WorkWords.Plates(line.Load, line.Exercise, locale), line.Exercise.Load == LoadedBy.Bar ? line.Load.Made?.PerSide ?? [] : [], PlainText.Clean(string.Join(" · ", how.OfType<string>())), line.Prescription.Sets, line.Instead);
    }

    /// <summary>"rest 2.5 min", of a superset or circuit "90 s after a round".</summary>
    internal static string Rest(WorkoutPart part, LocaleSettings locale) => Say(part.Kind == PartKind.Straight ? "work.rest" : "work.rest-round", part.Rest < 120 ? Say("work.seconds", part.Rest) : Say("work.minutes", WorkWords.Number(Math.Round(part.Rest / 60m, 1), locale)));
}
