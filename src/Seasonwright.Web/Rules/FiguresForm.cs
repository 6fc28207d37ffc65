using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Setups;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Rules;

/// <summary>The figures of one rule as they came back from their form.</summary>
/// <param name="Typed">What was typed, by figure.</param>
/// <param name="Wrong">What is wrong with it, by figure; nothing is set while anything is.</param>
/// <param name="Edits">What changes: an empty field and the default itself give the default back.</param>
public sealed record FiguresForm(Rule Rule, ImmutableSortedDictionary<string, string> Typed, ImmutableSortedDictionary<string, string> Wrong, ImmutableArray<SetRuleParameter> Edits)
{
    /// <summary>What the names of the fields begin with.</summary>
    public const string Field = "figure.";

    /// <summary>Name of the button that gives one figure's default back, whatever else was typed.</summary>
    public const string Reset = "reset";

    /// <returns>Null where the form is about no rule.</returns>
    internal static FiguresForm? Read(Posted form, Setup setup)
    {
        if (Rulebook.Find(form["rule"]) is not { } rule) return null;
        var typed = form.Starting(Field).ToImmutableSortedDictionary(field => field.Name, field => field.Value, StringComparer.Ordinal);
        if (rule.Settings.FirstOrDefault(figure => figure.Name == form[Reset]) is { } back)
            return new(rule, typed.SetItem(back.Name, ""), typed.Clear(), [new SetRuleParameter(new(rule.Id, back.Name), null)]);
        var wrong = typed.ToBuilder();
        wrong.Clear();
        var edits = ImmutableArray.CreateBuilder<SetRuleParameter>();
        foreach (var figure in rule.Settings)
        {
            if (!typed.TryGetValue(figure.Name, out var text)) continue;
            var value = text.Length == 0 ? figure.Default : TypedFigure.Read(figure, text);
            if (value is null) wrong[figure.Name] = WhyNot(figure, text);
            else if (value != new Figures(rule.Id, setup).Text(figure)) edits.Add(new(new(rule.Id, figure.Name), value == figure.Default ? null : value));
        }
        if (wrong.Count == 0) foreach (var (figure, why) in Together(rule, setup, edits)) wrong[figure.Name] = why;
        return new(rule, typed, wrong.ToImmutable(), edits.ToImmutable());
    }

    /// <summary>What is wrong with figures that are each possible: a least above its most, a governing body's limits without their day.</summary>
    private static IEnumerable<(Figure Figure, string Why)> Together(Rule rule, Setup setup, IEnumerable<SetRuleParameter> edits)
    {
        var changed = edits.ToDictionary(edit => edit.Parameter.Name, edit => edit.Value, StringComparer.Ordinal);
        string Value(Figure figure) => changed.TryGetValue(figure.Name, out var value) ? value ?? figure.Default : new Figures(rule.Id, setup).Text(figure);
        foreach (var (less, more) in rule.Rising.SelectMany(row => row.Zip(row.Skip(1))))
            if (decimal.Parse(Value(less), CultureInfo.InvariantCulture) > decimal.Parse(Value(more), CultureInfo.InvariantCulture))
                yield return (changed.ContainsKey(less.Name) ? less : more, Words.Say("rulebook.wrong.order", rule.LabelOf(less), rule.LabelOf(more)));
        if (rule.Settings.FirstOrDefault(figure => figure.Name is "preset") is { } preset && Value(preset) != preset.Default && Value(Figure.PresetDate).Length == 0)
            yield return (Figure.PresetDate, Words.Say("rulebook.wrong.no-date"));
    }

    private static string WhyNot(Figure figure, string typed)
    {
        var (least, most) = TypedFigure.Range(figure);
        return figure.Kind switch
        {
            FigureKind.Number => Words.Say("rulebook.wrong.number", typed, least, most),
            FigureKind.Numbers => Words.Say("rulebook.wrong.numbers", typed, figure.Default.Split(' ').Length, least, most),
            FigureKind.Day => Words.Say("rulebook.wrong.day", typed, Figure.FirstYear, Figure.LastYear),
            _ => Words.Say("rulebook.wrong.words", typed),
        };
    }
}
