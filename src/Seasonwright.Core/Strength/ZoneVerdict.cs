namespace Seasonwright.Core.Strength;

/// <summary>What a zone says of the sets that were done in it.</summary>
/// <param name="Repetitions">In all.</param>
/// <param name="SetsOutside">Sets with fewer or more repetitions than the zone has.</param>
public readonly record struct ZoneVerdict(int Repetitions, ZoneVolume Volume, int SetsOutside);
