using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Who plays in a listed match.</summary>
/// <param name="Home">Null unless both teams are named.</param>
/// <param name="Away">Null unless both teams are named.</param>
/// <param name="Opponent">In one team's own list; empty when not said.</param>
/// <param name="Venue">What marks around the names say.</param>
/// <param name="Versus">"vs" stands in front of the opponent.</param>
/// <param name="AwayFirst">"A @ B": the away team stands first, and perhaps its figures too.</param>
internal sealed record Sides(string? Home, string? Away, string Opponent, Venue? Venue, bool Versus, bool AwayFirst)
{
    public bool AreBoth => Home is not null && Away is not null;

    /// <summary>Reads the names of all matches; names found in plain rows help to cut those with dashes in them.</summary>
    public static List<Sides> Of(List<ListedMatch> matches)
    {
        var first = matches.Select(match => Of(match, null)).ToList();
        var names = first.Where(sides => sides.AreBoth).SelectMany(sides => new[] { sides.Home!, sides.Away! }).Select(Spelling.Fold).ToHashSet(StringComparer.Ordinal);
        return [.. matches.Zip(first, (match, sides) => sides.AreBoth || names.Count == 0 || match.Pair.Length == 0 ? sides : Of(match, name => names.Contains(Spelling.Fold(name))))];
    }

    private static Sides Of(ListedMatch match, Func<string, bool>? isTeam)
    {
        if (match.Home.Length > 0 && match.Away.Length > 0) return new(match.Home, match.Away, "", null, false, false);
        var cell = match.Opponent.Length > 0 ? match.Opponent : match.Pair.Length > 0 ? match.Pair : match.Home + match.Away;
        // A formula is text as a whole; nothing in it is a mark.
        if (Formula.Is(cell)) return new(null, null, cell, null, false, false);
        var pair = PairText.Read(cell, isTeam);
        // An own list's opponent may hold a dash; only "v" and "@" make two teams of it.
        if (match.Opponent.Length > 0 && pair.Home is not null) return new(null, null, cell, null, false, false);
        return new(pair.Home, pair.Away, pair.Opponent ?? "", pair.Venue, pair.Versus, pair.Home is not null && cell.Contains('@', StringComparison.Ordinal));
    }
}
