using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>What a session gives one quality, in the units of the work. Without any number the quality is only touched.</summary>
/// <param name="Sets">Hard sets, 1 to 60.</param>
/// <param name="Top">The heaviest, in per cent of the most that can be lifted once: 20 to 130 %.</param>
/// <param name="Contacts">Ground contacts of jumps, 1 to 500.</param>
/// <param name="Metres">Metres sprinted, 1 to 3,000.</param>
public sealed record Dose(QualityId Quality, int? Sets = null, Percent? Top = null, int? Contacts = null, int? Metres = null)
{
    public const int MostSets = 60, LeastTop = 20, MostTop = 130, MostContacts = 500, MostMetres = 3_000;
}
