namespace Seasonwright.Documents.Read.Squads;

/// <summary>The names of a list, decided together: which of two comes first is what the whole column shows, or is asked.</summary>
internal static class SquadNames
{
    /// <param name="says">What the heading says: the family name first or not; null where it says nothing.</param>
    public static List<NamedLine> Read(IReadOnlyList<SquadLine> lines, bool? says, Asker asker)
    {
        var whole = lines.Where(line => line.Family.Length + line.Given.Length == 0).ToList();
        var plain = whole.Where(line => !HasComma(line.Name) && line.Name.Contains(' ', StringComparison.Ordinal)).ToList();
        var tells = plain.Select(line => PersonName.TellsFamilyFirst(line.Name)).OfType<bool>().ToHashSet();
        var known = says ?? (tells.Count == 1 ? tells.First() : (bool?)null);
        var commas = whole.Count(line => HasComma(line.Name));
        // Most rows write "Family, Given": a row without the comma may have forgotten it, or turned the two.
        var byRow = commas * 2 > whole.Count;
        var askAll = !byRow && known is null && plain.Exists(IsOpen) ? AskAll([.. plain.Where(IsOpen)], asker) : (Asked?)null;
        var familyFirst = known ?? (askAll?.Answer == "family-first" || byRow);
        return [.. lines.Select(Named)];

        NamedLine Named(SquadLine line)
        {
            if (line.Family.Length + line.Given.Length > 0) return new(line, line.Family, line.Given, []);
            var asks = new List<string>();
            var first = familyFirst;
            if (byRow && known is null && plain.Contains(line) && IsOpen(line))
            {
                var asked = AskOne(line, asker);
                first = asked.Answer != "family-last";
                if (asked.IsOpen) asks.Add(asked.Id);
            }
            else if (askAll is { IsOpen: true } open && plain.Contains(line) && IsOpen(line)) asks.Add(open.Id);
            var name = PersonName.Of(line.Name, first);
            if (name.Doubt == NameDoubt.Split && AskSplit(line, name, first, asker) is var split)
            {
                if (split.IsOpen) asks.Add(split.Id);
                else name = Cut(line.Name, split.Answer!, first);
            }
            else if (name.Doubt == NameDoubt.Alone && asker.Ask("alone", Spelling.Fold(line.Name), [line.Line], [Asker.Option("alone", "family"), Asker.Option("alone", "given")], [line.Name], "family", name: "Q-split") is var alone)
            {
                if (alone.IsOpen) asks.Add(alone.Id);
                else if (alone.Answer == "given") name = name with { Family = "", Given = name.Family };
            }
            return new(line, name.Family, name.Given, asks);
        }
    }

    private static bool HasComma(string name) => name.TrimEnd(',').Contains(',', StringComparison.Ordinal);

    private static bool IsOpen(SquadLine line) => PersonName.Of(line.Name, true) is var one && PersonName.Of(line.Name, false) is var other && (one.Family, one.Given) != (other.Family, other.Given);

    private static Asked AskAll(List<SquadLine> lines, Asker asker) => asker.Ask("name-order", "", lines.Select(line => line.Line),
        [Asker.Option("name-order", "given-first"), Asker.Option("name-order", "family-first")], [lines[0].Name, lines.Count], "given-first", name: "Q-order");

    private static Asked AskOne(SquadLine line, Asker asker)
    {
        var (first, last) = (PersonName.Of(line.Name, true).Family, PersonName.Of(line.Name, false).Family);
        return asker.Ask("name-comma", Spelling.Fold(line.Name), [line.Line], [new("family-first", first), new("family-last", last)], [line.Name, first], "family-first", name: "Q-order");
    }

    // Of "María Pérez García" the family name may begin at any word but the first.
    private static Asked AskSplit(SquadLine line, PersonName name, bool familyFirst, Asker asker)
    {
        var words = line.Name.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var cuts = Enumerable.Range(1, words.Length - 1).Select(at => string.Join(' ', familyFirst ? words[..at] : words[at..])).Prepend(name.Family).Distinct(StringComparer.Ordinal).Take(4);
        return asker.Ask("split", Spelling.Fold(line.Name), [line.Line], cuts.Select(cut => new AnswerOption(cut, cut)), [line.Name, name.Family], name.Family);
    }

    private static PersonName Cut(string name, string family, bool familyFirst) =>
        new(family, Spelling.Tidy(familyFirst ? name[Math.Min(family.Length, name.Length)..] : name[..Math.Max(0, name.Length - family.Length)]), NameDoubt.None);
}

/// <summary>A line with its names cut.</summary>
/// <param name="Asks">Ids of open questions about the name.</param>
internal sealed record NamedLine(SquadLine Line, string Family, string Given, IReadOnlyList<string> Asks)
{
    public string Name => $"{Given} {Family}".Trim();
}
