using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules;

/// <summary>
/// A rule of the rulebook: what it is, on what it rests, its figures, and, where a plan or a squad can feed it, the function that
/// looks at them. One rule is one file; its words stand in <c>RuleWords.resx</c> under its id.
/// </summary>
public sealed class Rule(string id)
{
    /// <summary>Part of the file format: never changes.</summary>
    public string Id { get; } = id;

    public required RuleScope Scope { get; init; }

    /// <summary>The most serious it is called by its own figures.</summary>
    public required Severity Highest { get; init; }

    public required Evidence Evidence { get; init; }

    public required SourceStatus Status { get; init; }

    public required ValueList<Source> Sources { get; init; }

    /// <summary>Its publications in one line.</summary>
    public string Citations => string.Join("; ", Sources.Select(source => source.Citation));

    public required ValueList<Figure> Figures { get; init; }

    /// <summary>Rows of its figures of which none may pass the next: a least and a most, a caution and a warning.</summary>
    public ValueList<ValueList<Figure>> Rising { get; init; } = ValueList<ValueList<Figure>>.Empty;

    /// <summary>What it, or a part of it, waits for.</summary>
    public Needs Needs { get; init; }

    /// <summary>Only about athletes under 18.</summary>
    public bool IsForYouth { get; init; }

    /// <summary>Medical and privacy rules: nobody may switch them off.</summary>
    public bool IsFixed { get; init; }

    /// <summary>The figure that chooses a governing body's limits, for a rule that is off without them.</summary>
    public Figure? OnlyBy { get; init; }

    /// <summary>Who may release a stop of this rule.</summary>
    public ValueList<StaffRole> Releasers { get; init; } = ValueList<StaffRole>.Empty;

    /// <summary>What it finds in a plan, place by place; null while it waits for what no plan holds.</summary>
    internal Func<Plan, Figures, IEnumerable<Look>>? Looks { get; init; }

    /// <summary>What it finds in the days of a squad, place by place: about people, and so never in what is found in a plan, see <see cref="Rulebook.CheckSquad"/>.</summary>
    internal Func<SquadPlan, Figures, IEnumerable<Look>>? LooksAtPlayers { get; init; }

    /// <summary>Whether a squad's days feed it.</summary>
    public bool IsOfPlayers => LooksAtPlayers is not null;

    /// <summary>Whether a plan alone feeds it.</summary>
    public bool IsLive => Looks is not null;

    /// <summary>Its figures and, where it may be switched off, the switch.</summary>
    public IEnumerable<Figure> Settings => IsFixed || OnlyBy is not null ? Figures : Figures.Prepend(Figure.On);

    public string Name => Word("name");

    /// <summary>What it looks at and when it speaks.</summary>
    public string What => Word("what");

    /// <summary>What usually mends it.</summary>
    public string UsualRemedy => Word("remedy");

    /// <summary>How far it can be trusted.</summary>
    public string Caveat => Word("caveat");

    /// <summary>Where its figures come from memory; null where none do.</summary>
    public string? FromMemory => RuleWords.Find($"{Id}.memory");

    /// <summary>Which figures were chosen by the authors of the rulebook; null where none were.</summary>
    public string? WorkingDefault => RuleWords.Find($"{Id}.working");

    /// <summary>What is contested about it; null where nothing is.</summary>
    public string? Contested => RuleWords.Find($"{Id}.contested");

    public string LabelOf(Figure figure) => RuleWords.Find($"{Id}.figure.{figure.Name}") ?? RuleWords.Say($"figure.{figure.Name}");

    /// <summary>What people read for a word of a choice.</summary>
    public string ChoiceWord(string choice) => RuleWords.Find($"choice.{Id}.{choice}") ?? RuleWords.Say($"choice.{choice}");

    /// <summary>Whether the team has it on: a rule that only a governing body's limits switch on needs them chosen and dated.</summary>
    public bool IsOn(Setup setup)
    {
        var figures = new Figures(Id, setup);
        return IsFixed || (OnlyBy is { } preset ? figures.Preset(preset) is not null : figures.IsYes(Figure.On));
    }

    /// <summary>The most serious the team lets it be called.</summary>
    public Severity HighestFor(Setup setup) =>
        Evidence == Evidence.Contested && new Figures(Id, setup).Text(Figure.HighestSeverity) != "warning" ? Severity.Caution : Highest;

    /// <summary>The figures in force in one line, so that an acceptance knows when they changed.</summary>
    internal string InForce(Setup setup)
    {
        var figures = new Figures(Id, setup);
        return string.Join("; ", Settings.Where(figure => figures.Text(figure) != figure.Default).Select(figure => $"{figure.Name}={figures.Text(figure)}"));
    }

    private string Word(string what) => RuleWords.Say($"{Id}.{what}");
}
