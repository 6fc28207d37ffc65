namespace Seasonwright.Core.Seasons;

/// <summary>How much a quality gets in a week, as real exposures: 0, 1, 2 or 3.</summary>
public enum Emphasis
{
    None = 0,
    Maintain = 1,
    Develop = 2,
    Focus = 3,
}
