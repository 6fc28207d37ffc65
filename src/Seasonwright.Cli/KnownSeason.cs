using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Wire;

namespace Seasonwright.Cli;

/// <summary>What a list is compared with: the season of a file, or one that holds nothing but an earlier state of the list.</summary>
/// <param name="Days">The season's days; null for an earlier list.</param>
/// <param name="Order">The team's way of writing dates; null for an earlier list.</param>
internal sealed record KnownSeason(Season Season, DaySpan? Days = null, DayOrder? Order = null)
{
    /// <param name="take">Reads an earlier list.</param>
    /// <returns>What is known; null with the exit code after saying why there is nothing.</returns>
    public static (KnownSeason? Known, Exit Exit) Open(string path, Func<SourceText, NaturalIds, TakenList> take, Answers answers, Terminal terminal)
    {
        if (InputFile.Read(path, terminal) is not { } bytes) return (null, Exit.BadInput);
        if (SeasonFile.IsNamed(bytes)) return Of(SeasonFiles.Read(bytes, path, terminal));
        var season = Season.Empty(new SeasonId("earlier"));
        var setup = Setup.Empty(new TeamId("earlier"));
        var ids = new NaturalIds(season.Id);
        var taken = take(SourceText.OfBytes(Path.GetFileName(path), bytes), ids);
        if (taken.IsBlocked) return (null, taken.Tell(answers, terminal));
        // Its weeks do not matter: what lies outside them is kept too.
        var start = new StartSeason(Frame.PossibleDays.First, DayOfWeek.Monday, new([ids.Week(1)]), new TeamCard(taken.Name));
        foreach (var edit in new[] { start, taken.Edit }.OfType<SeasonEdit>())
            if (Edits.Do(ref season, ref setup, edit, terminal) is null) return (null, Exit.Refused);
        return (new KnownSeason(season), Exit.Done);
    }

    /// <summary>The season of a file.</summary>
    /// <inheritdoc cref="Open(string, Func{SourceText, NaturalIds, TakenList}, Answers, Terminal)"/>
    public static (KnownSeason? Known, Exit Exit) Open(string path, Terminal terminal) => Of(SeasonFiles.Open(path, terminal));

    private static (KnownSeason? Known, Exit Exit) Of(SeasonContent? file) => file is var (season, setup)
        ? (new(season, season.Days, setup.Locale.DateOrder == DateOrder.MonthDayYear ? DayOrder.MonthFirst : DayOrder.DayFirst), Exit.Done)
        : (null, Exit.BadInput);
}
