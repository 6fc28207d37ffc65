namespace Seasonwright.Desk;

/// <summary>Who acts. On a laptop there is one person; club, team and role join when accounts do.</summary>
/// <param name="Person">Person id, never a name.</param>
public sealed record Actor(string Person);
