using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>A change asked for, as a value in the user's words. A closed family: one file per edit.</summary>
public abstract record Edit
{
    private protected Edit() { }
}

/// <summary>An edit of a season.</summary>
public abstract record SeasonEdit : Edit
{
    private protected SeasonEdit() { }

    /// <summary>One line for the history, in the coach's words.</summary>
    /// <param name="season">The state before the edit; weeks have its numbers, things its names.</param>
    /// <param name="setup">The team's, for names of qualities and the normal hard week that loads are per cent of.</param>
    public abstract string Describe(Season season, Setup setup);

    /// <summary>Validates once and writes what follows into the draft. Never throws on content.</summary>
    internal abstract void Decide(SeasonDraft draft);
}

/// <summary>An edit of a team's setup.</summary>
public abstract record SetupEdit : Edit
{
    private protected SetupEdit() { }

    /// <summary>One line for the history.</summary>
    public abstract string Describe(Setup setup);

    /// <summary>Validates once and writes what follows into the draft. Never throws on content.</summary>
    internal abstract void Decide(Draft draft);
}

/// <summary>An edit of what a club's teams share.</summary>
public abstract record ClubEdit : Edit
{
    private protected ClubEdit() { }

    /// <summary>One line for the history.</summary>
    public abstract string Describe(Club club);

    /// <summary>Validates once and writes what follows into the draft. Never throws on content.</summary>
    internal abstract void Decide(Draft draft);
}
