using Seasonwright.Core.Facts;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Documents;

namespace Seasonwright.Web.Rules;

/// <summary>What every row of the page needs to know of the page.</summary>
/// <param name="Names">By person.</param>
/// <param name="Team">Who set the team's figures.</param>
/// <param name="Season">Who accepted findings.</param>
/// <param name="Gesture">Of every form on the page: only one of them is sent.</param>
/// <param name="Form">Figures that could not be kept, as typed.</param>
/// <param name="Refused">Why not, where it was not for what was typed.</param>
public sealed record RulebookDesk(
    OpenSeason Open, IReadOnlyDictionary<string, string> Names, LastTouches Team, LastTouches Season, Guid Gesture, FiguresForm? Form, IReadOnlyList<string> Refused)
{
    /// <summary>"Runa Eskdale, Wed 20 Oct 2027"; null where nobody wrote the place.</summary>
    public string? Last(LastTouches touches, Key place) => touches.Of(place) is not { } line ? null
        : $"{Names.GetValueOrDefault(line.Author, Words.Say("person.unknown"))}, {DateOnly.FromDateTime(line.Instant.LocalDateTime).Long(Open.Setup.Locale)}";
}
