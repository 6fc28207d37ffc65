using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Wire;

namespace Seasonwright.Cli;

/// <summary>Season files as the commands take and give them.</summary>
internal static class SeasonFiles
{
    /// <returns>The season with its team's setup; null after saying what is wrong with the file.</returns>
    public static SeasonContent? Open(string path, Terminal terminal) =>
        InputFile.Read(path, terminal) is { } bytes ? Read(bytes, path, terminal) : null;

    /// <returns>The same of a season that has weeks; null also after saying that it has none.</returns>
    public static SeasonContent? OpenStarted(string path, Terminal terminal)
    {
        if (Open(path, terminal) is not { } content) return null;
        if (content.Season.IsStarted) return content;
        terminal.Complain("propose.not-started", path);
        return null;
    }

    /// <inheritdoc cref="Open"/>
    public static SeasonContent? Read(ReadOnlySpan<byte> bytes, string path, Terminal terminal)
    {
        var read = SeasonFile.Read(bytes, out var problem);
        if (problem is not null) terminal.Complain(path, problem);
        return read;
    }

    /// <returns>False after saying why it could not be written.</returns>
    /// <param name="edition">The published version that it is; null for a season that is being worked on.</param>
    public static bool Save(string path, Season season, Setup setup, Terminal terminal, Edition? edition = null) =>
        OutputFile.Write(path, SeasonFile.Write(season, setup, edition), terminal);
}
