using System.Text;

namespace Seasonwright.Cli;

/// <summary>The lines of a UTF-8 text; LF and CRLF end them.</summary>
internal static class TextLines
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <returns>The lines without their ends; null after saying where the text is not UTF-8.</returns>
    public static IReadOnlyList<string>? Of(ReadOnlySpan<byte> bytes, string path, Terminal terminal)
    {
        if (bytes.StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[Encoding.UTF8.Preamble.Length..];
        var lines = new List<string>();
        foreach (var range in bytes.Split((byte)'\n'))
        {
            var line = bytes[range];
            if (line.EndsWith("\r"u8)) line = line[..^1];
            try
            {
                lines.Add(Strict.GetString(line));
            }
            catch (DecoderFallbackException error)
            {
                terminal.Complain("in.not-utf8", path, lines.Count + 1, error.Index + 1);
                return null;
            }
        }
        return lines;
    }
}
