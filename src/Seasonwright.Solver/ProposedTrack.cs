namespace Seasonwright.Solver;

/// <summary>What a proposal holds of a week, as it can be taken one by one.</summary>
public enum ProposedTrack
{
    Phases,
    Blocks,
    Kinds,
    Loads,
    Emphasis,
    Tests,
}
