using System.Globalization;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>Makes rows of the lines of a list and asks what it leaves open. Until it is answered the weaker form holds.</summary>
internal sealed class SquadQuestions(SquadOptions options, Asker asker, SquadTold told, SquadUnits said)
{
    private static readonly char[] Between = ['/', ',', ';', '&', '+'];

    /// <summary>The unit of body masses written without one; null while it is asked.</summary>
    public MassUnit? MassUnit { get; private set; }

    /// <summary>The unit of lifts written without one; null while it is asked.</summary>
    public MassUnit? LiftUnit { get; private set; }

    /// <param name="headed">The unit in the heading of the body masses.</param>
    public List<SquadRow> Rows(IReadOnlyList<NamedLine> people, BirthDates born, MassUnit? headed)
    {
        var masses = Masses([.. people.Select(person => person.Line)], headed ?? said.Mass);
        var lifts = Lifts([.. people.Select(person => person.Line)]);
        var rows = people.Select(person => Row(person, born, masses, lifts)).ToList();
        Same(rows);
        Numbers(rows);
        Positions(rows);
        Waiting(rows, people);
        Medical(rows);
        return rows;
    }

    private SquadRow Row(NamedLine person, BirthDates born, Dictionary<int, (EnteredMass? Mass, List<string> Asks)> masses, Dictionary<int, (ValueList<SquadLift> Lifts, List<string> Asks)> lifts)
    {
        var line = person.Line;
        var asks = person.Asks.ToList();
        var (day, askBorn) = born.ByLine.GetValueOrDefault(line.Line);
        if (askBorn is not null) asks.Add(askBorn);
        var (mass, massAsks) = masses.GetValueOrDefault(line.Line, (null, []));
        var (entered, liftAsks) = lifts.GetValueOrDefault(line.Line, (ValueList<SquadLift>.Empty, []));
        asks.AddRange([.. massAsks, .. liftAsks]);
        var (age, bareMass) = Bare(person, asks);
        return new SquadRow(line.Line, person.Family, person.Given, Number(line), PositionsOf(line.Position), day, Age(line) ?? age, mass ?? bareMass, Height(line), entered,
            Said(line.Group), Said(string.Join("; ", line.Remarks)), Waits: false, asks.ToValueList());
    }

    private static string? Said(string text) => text.Length == 0 ? null : Spelling.Cut(text, 500);

    private static ValueList<string> PositionsOf(string text) => text.Replace(" and ", "/", StringComparison.Ordinal).Replace(" und ", "/", StringComparison.Ordinal)
        .Split(Between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Where(part => !SquadColumns.IsNothing(part)).ToValueList();

    // "4./5." is "4/5"; "?" is none.
    private string? Number(SquadLine line)
    {
        var number = line.Number.Replace(" ", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal).Replace('&', '/').Trim('#', ':', ')', '(', '*');
        if (SquadColumns.IsNothing(number)) return null;
        if (number.Length <= 8 && number.Any(char.IsAsciiDigit)) return number;
        told.Unread(line.Line, line.Number, Sentences.Say("squad.number"));
        return null;
    }

    private int? Age(SquadLine line)
    {
        if (SquadColumns.IsNothing(line.Age)) return null;
        if (int.TryParse(line.Age.Split(' ', '.', ',')[0], NumberStyles.None, CultureInfo.InvariantCulture, out var age) && age is >= 4 and <= 80) return age;
        told.Unread(line.Line, line.Age, Sentences.Say("squad.age"));
        return null;
    }

    private string? Height(SquadLine line)
    {
        if (SquadColumns.IsNothing(line.Height)) return null;
        if (HeightText.IsMarked(line.Height)) return line.Height;
        if (HeightText.IsIn(line.Height)) return line.Height.Contains('-', StringComparison.Ordinal) ? line.Height : line.Height is [_, '.' or ',', ..] ? $"{line.Height} m" : $"{line.Height} cm";
        told.Unread(line.Line, line.Height, Sentences.Say("squad.height"));
        return null;
    }

    /// <summary>A figure alone in a line: an age, or a body mass; neither is written before somebody says so.</summary>
    private (int? Age, EnteredMass? Mass) Bare(NamedLine person, List<string> asks)
    {
        if (person.Line.Bare.Length == 0) return (null, null);
        var figure = int.Parse(person.Line.Bare, CultureInfo.InvariantCulture);
        var unit = MassUnit ?? options.Unit;
        var (kind, yes) = PieceReading.IsAge(figure) ? ("age", "age") : ("bare", "mass");
        var asked = asker.Ask(kind, Spelling.Fold(person.Name), [person.Line.Line], [Asker.Option(kind, yes, figure, unit.Word()), Asker.Option(kind, "other")], [person.Name, figure, unit.Word()], yes);
        if (asked.IsOpen) asks.Add(asked.Id);
        return asked.Answer switch
        {
            "age" => (figure, null),
            "mass" when figure > 0 => (null, new(figure, unit)),
            _ => (null, null),
        };
    }

    private Dictionary<int, (EnteredMass? Mass, List<string> Asks)> Masses(List<SquadLine> lines, MassUnit? known)
    {
        var read = new Dictionary<int, (decimal Amount, decimal Pounds, MassUnit? Unit)>();
        foreach (var line in lines.Where(line => !SquadColumns.IsNothing(line.Mass)))
        {
            if (MassText.Read(line.Mass) is { } mass) read.TryAdd(line.Line, mass);
            else told.Unread(line.Line, line.Mass, Sentences.Say("squad.mass"));
        }
        var bare = read.Where(mass => mass.Value.Unit is null).ToList();
        var written = read.Values.Select(mass => mass.Unit).OfType<MassUnit>().Distinct().ToList();
        if (known is null && written is [not Squads.MassUnit.Stone]) known = written[0];
        var usual = bare.Count == 0 ? null : Usual(bare.Select(mass => mass.Value.Amount));
        (MassUnit, var ask, var unit) = bare.Count == 0 ? (known, null, known) : Unit(usual is null ? "unit-odd" : "unit-mass", known, bare.Select(mass => mass.Key), usual);
        return read.ToDictionary(mass => mass.Key, mass => Made(mass.Key, mass.Value));

        (EnteredMass?, List<string>) Made(int line, (decimal Amount, decimal Pounds, MassUnit? Unit) mass)
        {
            var asks = new List<string>();
            if (mass.Unit is null && ask is not null) asks.Add(ask);
            if ((mass.Unit ?? unit) is not { } known) return (null, asks);
            var entered = new EnteredMass(mass.Amount, known, mass.Pounds);
            if (MassText.IsPossible(entered)) return (entered, asks);
            var tenth = entered with { Amount = entered.Amount / 10 };
            var asked = asker.Ask("mass", $"{entered}", [line], [.. MassText.IsPossible(tenth) ? [new AnswerOption($"{tenth}", $"{tenth}")] : Array.Empty<AnswerOption>(), Asker.Option("mass", "drop")], [$"{entered}"],
                takes: answer => Said(answer) is not null);
            if (asked.IsOpen) asks.Add(asked.Id);
            return (asked.Answer is null or "drop" ? null : Said(asked.Answer), asks);

            EnteredMass? Said(string answer) => MassText.Read(answer.Trim()) is { } read && new EnteredMass(read.Amount, read.Unit ?? known, read.Pounds) is var said && MassText.IsPossible(said) ? said : null;
        }
    }

    // The team's unit, unless half of the figures would then be heavier or lighter than players are; null where the other fits better.
    private MassUnit? Usual(IEnumerable<decimal> amounts)
    {
        var sorted = amounts.Order().ToList();
        return new EnteredMass(sorted[sorted.Count / 2], options.Unit).Kilograms is >= 30 and <= 120 ? options.Unit : null;
    }

    /// <returns>The unit told; the question, while it is open; the unit that holds.</returns>
    private (MassUnit? Told, string? Ask, MassUnit? Holds) Unit(string kind, MassUnit? known, IEnumerable<int> lines, MassUnit? usual)
    {
        if (known is not null) return (known, null, known);
        var offered = usual ?? (options.Unit == Squads.MassUnit.Pound ? Squads.MassUnit.Kilogram : Squads.MassUnit.Pound);
        var asked = asker.Ask(kind, kind == "unit-lifts" ? "lifts" : "mass", lines, [new("kg", "kg"), new("lb", "lb")], [options.Unit.Word()], offered.Word(), name: "Q-unit");
        var answer = asked.Answer is { } word ? MassText.UnitOf(word) : null;
        return (answer, asked.IsOpen ? asked.Id : null, answer ?? usual);
    }

    private Dictionary<int, (ValueList<SquadLift> Lifts, List<string> Asks)> Lifts(List<SquadLine> lines)
    {
        var all = lines.Where(line => line.Lifts.Count > 0).DistinctBy(line => line.Line).ToList();
        var cells = all.SelectMany(line => line.Lifts).ToList();
        if (cells.Count == 0) return [];
        var noUnit = all.Where(line => line.Lifts.Any(lift => (lift.Text.Unit ?? lift.Unit) is null)).Select(line => line.Line).ToList();
        var written = cells.Select(lift => lift.Text.Unit ?? lift.Unit).OfType<MassUnit>().Distinct().ToList();
        var known = said.Lift ?? (written is [var only] && noUnit.Count * 2 < all.Count ? only : null);
        (LiftUnit, var askUnit, var unit) = noUnit.Count == 0 ? (known, null, known) : Unit("unit-lifts", known, noUnit, options.Unit);
        var bare = cells.Find(IsOpen);
        var meaning = bare is null ? (Asked?)null : asker.Ask("lifts", "", all.Select(line => line.Line), [Asker.Option("lifts", "max"), Asker.Option("lifts", "working")],
            [bare.Text.Amount.ToString("0.##", CultureInfo.InvariantCulture), string.Join(", ", cells.Where(lift => !Spelling.Same(lift.CalledAs, lift.Exercise)).Select(lift => $"{lift.CalledAs} = {lift.Exercise}").Distinct(StringComparer.Ordinal).DefaultIfEmpty("-"))]);
        return all.ToDictionary(line => line.Line, line => (line.Lifts.Select(Made).ToValueList(), Asks(line)));

        SquadLift Made(LiftCell lift) => new(lift.Exercise, lift.CalledAs, new(lift.Text.Amount, lift.Text.Unit ?? lift.Unit ?? unit!.Value), lift.Text.Reps ?? (lift.Reps > 1 ? lift.Reps : null),
            lift.Text.Reps is not null || lift.Reps > 1 ? null : lift.Text.IsMax || lift.Reps == 1 || said.AreMax ? true : meaning?.Answer switch { "max" => true, "working" => false, _ => null });

        List<string> Asks(SquadLine line) => [.. askUnit is not null && noUnit.Contains(line.Line) ? [askUnit] : Array.Empty<string>(), .. meaning is { IsOpen: true } open ? [open.Id] : Array.Empty<string>()];
        bool IsOpen(LiftCell lift) => lift is { Reps: null, Text: { Reps: null, IsMax: false } } && !said.AreMax;
    }

    // Two rows of one name: the same row again is one; else they are two people until somebody says otherwise.
    private void Same(List<SquadRow> rows)
    {
        foreach (var same in rows.GroupBy(row => (Spelling.Fold(row.Family), Spelling.Fold(row.Given))).Where(same => same.Count() > 1).ToList())
        {
            foreach (var repeat in same.Skip(1).Where(row => row with { Line = same.First().Line, Ask = same.First().Ask } == same.First()))
            {
                rows.Remove(repeat);
                told.Skip(repeat.Line, repeat.Name, "squad-repeat", same.First().Line);
            }
            var left = same.Where(rows.Contains).ToList();
            if (left.Count < 2) continue;
            var asked = asker.Ask("same-person", $"{Spelling.Fold(left[0].Family)}, {Spelling.Fold(left[0].Given)}", left.Select(row => row.Line), [Asker.Option("same-person", "two"), Asker.Option("same-person", "one")], [left[0].Name, left.Count], "two", name: "Q-same");
            if (asked.Answer != "one")
            {
                if (asked.IsOpen) foreach (var row in left) Add(rows, row, asked.Id);
                continue;
            }
            var whole = left.Aggregate(Both);
            rows[rows.IndexOf(left[0])] = whole;
            foreach (var other in left.Skip(1))
            {
                rows.Remove(other);
                told.Skip(other.Line, other.Name, "squad-same", whole.Line);
            }
        }
    }

    // What the first row leaves open the other one fills in.
    private static SquadRow Both(SquadRow one, SquadRow other) => one with
    {
        Number = one.Number ?? other.Number,
        Positions = one.Positions.Count > 0 ? one.Positions : other.Positions,
        Born = one.Born ?? other.Born,
        Age = one.Age ?? other.Age,
        Mass = one.Mass ?? other.Mass,
        Height = one.Height ?? other.Height,
        Lifts = one.Lifts.Concat(other.Lifts.Where(lift => one.Lifts.All(had => had.Exercise != lift.Exercise))).ToValueList(),
        Group = one.Group ?? other.Group,
        Remark = one.Remark ?? other.Remark,
        Ask = one.Ask.Concat(other.Ask).Distinct(StringComparer.Ordinal).ToValueList(),
    };

    private void Numbers(List<SquadRow> rows)
    {
        foreach (var row in rows.Where(row => row.Number?.Contains('/', StringComparison.Ordinal) == true).ToList())
        {
            var shirts = row.Number!.Split('/', StringSplitOptions.RemoveEmptyEntries);
            var asked = asker.Ask("number", $"{Spelling.Fold(row.Name)}|{row.Number}", [row.Line], [.. shirts.Distinct(StringComparer.Ordinal).Select(shirt => new AnswerOption(shirt, shirt)), Asker.Option("number", "both")], [row.Name, row.Number]);
            if (asked.IsOpen) Add(rows, row, asked.Id);
            else if (asked.Answer != "both") rows[rows.IndexOf(row)] = row with { Number = asked.Answer };
        }
        foreach (var twice in rows.Where(row => row.Number is not null).GroupBy(row => row.Number!.TrimStart('0'), StringComparer.Ordinal).Where(twice => twice.Count() > 1).Select(twice => twice.ToList()).ToList())
        {
            var asked = asker.Ask("shirt", twice[0].Number!, twice.Select(row => row.Line), [Asker.Option("shirt", "keep"), Asker.Option("shirt", "none")], [twice[0].Number, string.Join(", ", twice.Select(row => row.Name))], "keep", name: "Q-number");
            foreach (var row in twice)
            {
                if (asked.IsOpen) Add(rows, row, asked.Id);
                else if (asked.Answer == "none") rows[rows.IndexOf(row)] = row with { Number = null };
            }
        }
    }

    private void Positions(List<SquadRow> rows)
    {
        foreach (var several in rows.Where(row => row.Positions.Count > 1).GroupBy(row => string.Join('/', row.Positions), StringComparer.Ordinal).Select(several => several.ToList()).ToList())
        {
            var positions = several[0].Positions;
            var asked = asker.Ask("pos", Spelling.Fold(string.Join('/', positions)), several.Select(row => row.Line), positions.Distinct(StringComparer.Ordinal).Select(position => new AnswerOption(position, Sentences.Say("ask.pos.first", position))), [string.Join('/', positions)]);
            foreach (var row in several)
            {
                if (asked.IsOpen) Add(rows, row, asked.Id);
                else rows[rows.IndexOf(row)] = row with { Positions = positions.Where(position => position != asked.Answer).Prepend(asked.Answer!).ToValueList() };
            }
        }
    }

    // Who is on trial, and who is named only among those who are out, comes in once somebody says so.
    private void Waiting(List<SquadRow> rows, IReadOnlyList<NamedLine> people)
    {
        foreach (var person in people.Where(person => person.Line.IsTrial || person.Line.IsAbsent))
        {
            var at = rows.FindIndex(row => row.Line == person.Line.Line && row.Family == person.Family && row.Given == person.Given);
            if (at < 0) continue;
            var kind = person.Line.IsTrial ? "trial" : "injured";
            var asked = asker.Ask(kind, Spelling.Fold(person.Name), [person.Line.Line], [Asker.Option(kind, "yes"), Asker.Option(kind, "no")], [person.Name], kind == "injured" ? "yes" : null);
            if (asked.IsOpen) rows[at] = rows[at] with { Waits = true, Ask = rows[at].Ask.Append(asked.Id).ToValueList() };
            else if (asked.Answer == "no")
            {
                told.Skip(rows[at].Line, rows[at].Name, "squad-left-out");
                rows.RemoveAt(at);
            }
        }
    }

    private void Medical(List<SquadRow> rows)
    {
        if (told.Held.Count == 0) return;
        var lines = told.Held.Select(held => held.Line).ToHashSet();
        var asked = asker.Ask("medical", "", lines, [Asker.Option("medical", "note"), Asker.Option("medical", "drop"), Asker.Option("medical", "later")], [string.Join(", ", told.Held.Take(12).Select(held => held.Where)), told.Held.Count], "later");
        if (!asked.IsOpen) return;
        foreach (var row in rows.Where(row => lines.Contains(row.Line)).ToList()) Add(rows, row, asked.Id);
    }

    private static void Add(List<SquadRow> rows, SquadRow row, string ask)
    {
        var at = rows.FindIndex(other => other.Line == row.Line && other.Family == row.Family && other.Given == row.Given && other.Number == row.Number);
        if (at >= 0 && !rows[at].Ask.Contains(ask, StringComparer.Ordinal)) rows[at] = rows[at] with { Ask = rows[at].Ask.Append(ask).ToValueList() };
    }
}
