namespace Seasonwright.Core.Seasons;

/// <summary>How fast the coach lets load rise in preparation. The rules' limits hold either way.</summary>
public enum Boldness
{
    Usual,
    Careful,
    Bold,
}
