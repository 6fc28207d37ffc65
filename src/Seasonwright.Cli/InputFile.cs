namespace Seasonwright.Cli;

/// <summary>A file a command reads, whole.</summary>
internal static class InputFile
{
    /// <summary>No season, list of edits or fixture list comes near it; a wrong file often does.</summary>
    public const int MostBytes = 64 << 20;

    /// <returns>Its bytes; null after saying why there are none.</returns>
    public static byte[]? Read(string path, Terminal terminal)
    {
        try
        {
            if (Directory.Exists(path)) return No("in.directory");
            if (!File.Exists(path)) return No("in.missing");
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            var bytes = new MemoryStream();
            var chunk = new byte[1 << 16];
            while (file.Read(chunk) is > 0 and var read)
            {
                bytes.Write(chunk, 0, read);
                if (bytes.Length > MostBytes) return No("in.large", MostBytes >> 20);
            }
            return bytes.Length > 0 ? bytes.ToArray() : No("in.empty");
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return No("in.unreadable", error.Message);
        }

        byte[]? No(string id, object? more = null)
        {
            terminal.Complain(id, path, more);
            return null;
        }
    }
}
