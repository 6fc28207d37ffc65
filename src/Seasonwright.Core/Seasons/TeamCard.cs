namespace Seasonwright.Core.Seasons;

/// <summary>How the season is headed.</summary>
/// <param name="Name">The team.</param>
/// <param name="Title">The season, for instance "2027-28".</param>
/// <param name="Crest">Up to three letters drawn in a disc.</param>
/// <param name="CrestColour">"#rrggbb", or null for the house's own.</param>
/// <param name="Sport">In the coach's words.</param>
public sealed record TeamCard(string Name, string? Title = null, string? Crest = null, string? CrestColour = null, string? Sport = null);
