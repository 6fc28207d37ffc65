namespace Seasonwright.Documents.Read.Squads;

/// <summary>A person as the line has them, before names, dates, units and questions are settled. Empty where nothing stands; nothing in it tells of health.</summary>
internal sealed record SquadLine(int Line, string Raw)
{
    /// <summary>The name in one piece; empty where family and given names have columns of their own.</summary>
    public string Name { get; init; } = "";

    public string Family { get; init; } = "";

    public string Given { get; init; } = "";

    public string Number { get; init; } = "";

    public string Position { get; init; } = "";

    public string Born { get; init; } = "";

    public string Age { get; init; } = "";

    public string Mass { get; init; } = "";

    public string Height { get; init; } = "";

    public IReadOnlyList<LiftCell> Lifts { get; init; } = [];

    public string Group { get; init; } = "";

    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>A figure in a line of prose that says nothing of what it is.</summary>
    public string Bare { get; init; } = "";

    /// <summary>Somebody who is only on trial.</summary>
    public bool IsTrial { get; init; }

    /// <summary>Named only among those who are out.</summary>
    public bool IsAbsent { get; init; }
}

/// <summary>A lift of a line, with what its heading says.</summary>
/// <param name="CalledAs">As the list calls it.</param>
/// <param name="Unit">The heading's unit; null where it names none.</param>
/// <param name="Reps">The heading's repetitions, 1 for "1RM"; null where it names none.</param>
internal sealed record LiftCell(string Exercise, string CalledAs, MassUnit? Unit, int? Reps, LiftText Text);

/// <summary>What is told beside the rows while a list is read.</summary>
internal sealed class SquadTold
{
    public List<Skipped> Skipped { get; } = [];

    public List<HeldBack> Held { get; } = [];

    /// <summary>A line that is no row. One that tells of health shows no words.</summary>
    public void Skip(int line, string text, string kind, params object?[] values) => Skipped.Add(Read.Skipped.Of(line, HealthWords.BesidePerson(text) ? "" : text, kind, values));

    /// <summary>A cell of a row that cannot be read as what its column holds.</summary>
    public void Unread(int line, string cell, string heading) => Skip(line, cell, "squad-cell", HealthWords.BesidePerson(heading) ? "" : heading);

    public void Hold(int line, string where)
    {
        if (!Held.Contains(new(line, where))) Held.Add(new(line, where));
    }
}
