using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Boards;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;
using Seasonwright.Desk.Boards;
using Seasonwright.Documents;

namespace Seasonwright.Web.Boards;

/// <summary>A board's sheet in the words of its script: everything said, nothing left to reckon.</summary>
internal sealed record BoardScript(
    int Minutes, int MostLeft, ValueList<ScriptPart> Parts, ValueList<ScriptItem> Items, ValueList<ValueList<ScriptRung>> Ladders, ValueList<ScriptRack> Racks, ValueList<ScriptGroup> Groups, ValueList<ScriptAthlete> Athletes)
{
    public static BoardScript Of(Season season, Setup setup, LedSession led)
    {
        var (sheet, locale) = (led.Sheet, setup.Locale);
        return new(
            sheet.Session.Minutes.Value,
            SetMark.MostLeft,
            [.. sheet.Items.GroupBy(item => item.Part).Select(part => new ScriptPart(part.First().Place[..1], part.Key.Part.Kind != PartKind.Straight, part.Key.Part.Rest, (PartTime.Seconds(part.Key, sheet.Exercise) + 59) / 60, [.. part.Select(item => item.Item.Item.Id.Text)]))],
            [.. sheet.Items.Select(item => new ScriptItem(item.Item.Item.Id.Text, item.Place, item.NeedsRack, item.Exercise.Id.Text, item.Exercise.Name, [.. item.Swaps.Select(swap => new ScriptSwap(swap.Id.Text, swap.Name))]))],
            [.. sheet.Ladders.Select(ladder => ladder.Select(made => new ScriptRung(WorkWords.Of(made.Weight, locale), made.Weight.ToString(), made.PerSide.Count == 0 ? "" : WorkWords.Plates(made.PerSide, locale))).ToValueList())],
            [.. sheet.Racks.Select(rack => new ScriptRack(rack.Rack.Name, Words.Say(rack.Rack.HasPlatform ? "board.rack-platform" : "board.rack-bar", WorkWords.Of(rack.Rack.Bar, locale)), rack.Rack.IsBroken, rack.Ladders))],
            [.. season.Groups.Select(group => new ScriptGroup(group.Id.Text, group.Name))],
            [.. sheet.Athletes.Select(one => Of(one, Short(one.Athlete, sheet), locale))]);
    }

    /// <summary>As somebody is called across a room: the given name, with the family's first letter where two have it.</summary>
    private static string Short(Athlete athlete, BoardSheet sheet) => athlete.Given.Length == 0 ? athlete.Family
        : sheet.Athletes.Count(other => string.Equals(other.Athlete.Given, athlete.Given, StringComparison.OrdinalIgnoreCase)) == 1 || athlete.Family.Length == 0 ? athlete.Given
        : $"{athlete.Given} {athlete.Family[..1]}.";

    private static ScriptAthlete Of(BoardAthlete one, string called, LocaleSettings locale)
    {
        var own = one.Work.Lines.Select(line => (line.Item.Id, line.Exercise.Id)).ToHashSet();
        return new(one.Athlete.Id.Text, one.Athlete.Number ?? "", one.Athlete.Name, called, one.Work.IsLifting ? "lifts" : one.Work.AsksFirst ? "asks" : "none", one.Work.IsModified, one.Work.IsMinor, one.Work.MostMinutes?.Value,
            [.. one.Groups.Select(group => group.Text)], [.. one.Lines.Select(line => Of(line, own.Contains((line.Line.Item.Id, line.Line.Exercise.Id)), locale))]);
    }

    private static ScriptLine Of(BoardLine board, bool isOwn, LocaleSettings locale)
    {
        var (line, exercise, written) = (board.Line, board.Line.Exercise, board.Line.Prescription);
        return new(line.Item.Id.Text, exercise.Id.Text, exercise.Name, isOwn, written.Sets, written.Amount, Unit(written.Unit), written.Unit == WorkUnit.Metres ? 5 : written.Unit == WorkUnit.Seconds ? 5 : 1, WorkWords.Amount(written, exercise),
            string.Join(", ", new[] { written.Tempo?.ToString(), written.Effort.Kind == EffortKind.Velocity && line.Load.Made is not null ? WorkWords.Of(written.Effort, locale) : null }.OfType<string>()),
            exercise.Load switch { LoadedBy.TwoDumbbells => Words.Say("board.two"), LoadedBy.OnTheBody => "+", _ => "" },
            WorkWords.Of(line.Load with { Made = null, Target = null }, exercise, written, locale), board.Loads);
    }

    private static string Unit(WorkUnit unit) => unit.ToString().ToLower(CultureInfo.InvariantCulture);
}

/// <param name="InTurn">A set of each exercise in turn.</param>
internal sealed record ScriptPart(string Letter, bool InTurn, int Rest, int Minutes, ValueList<string> Items);

internal sealed record ScriptItem(string Id, string Place, bool AtRack, string ExerciseId, string Exercise, ValueList<ScriptSwap> Swaps);

internal sealed record ScriptSwap(string Id, string Name);

/// <param name="W">The weight in words.</param>
/// <param name="V">As a mark holds it.</param>
/// <param name="P">Plates of a side.</param>
internal sealed record ScriptRung(string W, string V, string P);

internal sealed record ScriptRack(string Name, string Words, bool Broken, ValueList<int> Ladders);

internal sealed record ScriptGroup(string Id, string Name);

/// <param name="MostMinutes">Of the session; null for all of it.</param>
internal sealed record ScriptAthlete(string Id, string Number, string Name, string Short, string Fit, bool Modified, bool Minor, int? MostMinutes, ValueList<string> Groups, ValueList<ScriptLine> Lines);

/// <param name="Own">As it is written, or what a restriction makes of it; else a swap.</param>
/// <param name="Count">Of a set.</param>
/// <param name="Step">By which a tap changes it.</param>
/// <param name="Amount">It in words.</param>
/// <param name="How">Tempo, velocity; empty for none.</param>
/// <param name="Before">Words in front of the weight.</param>
/// <param name="Effort">How hard it should be, where no weight is known.</param>
internal sealed record ScriptLine(string Item, string Exercise, string Name, bool Own, int Sets, int Count, string Unit, int Step, string Amount, string How, string Before, string Effort, ValueList<LineLoad> Loads);

/// <summary>How the room comes out, in words, and the ways of sharing it.</summary>
internal sealed record ScriptFloor(ValueList<ScriptNeed> Says, ValueList<ScriptWay> Ways)
{
    public static ScriptFloor Of(LedSession led) => new(
        [.. FloorNeed.Of(led.Sheet, led.State).Select(need => new ScriptNeed(need.Sentence, need.IsShort))],
        [.. FloorWay.Of(led.Sheet, led.State).Select(way => new ScriptWay(Word(way.Kind), way.Sentence,
            [.. way.Stands.Select(stand => new ScriptStand(stand.Person.Text, stand.Rack, Word(stand.Half)))],
            [.. way.Turns.Select(turn => new ScriptTurn(turn.From, turn.To, Word(turn.Half)!, turn.Parts))],
            [.. way.Swaps.Select(swap => new ScriptSwapOf(swap.Person.Text, swap.Item.Text, swap.Exercise.Text))]))]);

    private static string Word(FloorWayKind kind) => System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(kind.ToString());

    private static string? Word(SquadHalf? half) => half?.ToString().ToLower(CultureInfo.InvariantCulture);
}

internal sealed record ScriptNeed(string Words, bool Short);

internal sealed record ScriptWay(string Kind, string Words, ValueList<ScriptStand> Stands, ValueList<ScriptTurn> Turns, ValueList<ScriptSwapOf> Swaps);

internal sealed record ScriptStand(string Person, string? Rack, string? Half);

internal sealed record ScriptTurn(int From, int To, string Half, string Parts);

internal sealed record ScriptSwapOf(string Person, string Item, string Exercise);
