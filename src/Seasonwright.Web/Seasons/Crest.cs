using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Web.Seasons;

/// <summary>The letters in a team's disc.</summary>
internal static class Crest
{
    /// <summary>The team's own, else the first letters of its first two words.</summary>
    public static string Of(TeamCard team) => team.Crest
        ?? string.Concat(team.Name.Split(' ', StringSplitOptions.RemoveEmptyEntries).Take(2).Select(word => StringInfo.GetNextTextElement(word)));
}
