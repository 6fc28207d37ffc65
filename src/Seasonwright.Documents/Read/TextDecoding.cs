using System.Buffers;
using System.Text;
using UtfUnknown;

namespace Seasonwright.Documents.Read;

/// <summary>Bytes made characters.</summary>
/// <param name="Encoding">In words.</param>
/// <param name="Trouble">Id of the problem that keeps the bytes from being read, or null.</param>
/// <param name="Line">Where the trouble is, 1 is the first.</param>
internal readonly record struct TextDecoding(string Text, string Encoding, string? Trouble = null, int? Line = null)
{
    // Below this the detector's choice among code pages is a guess; then the one most lists are written in is taken.
    private const float Sure = 0.9f;

    private const int Western = 1252, Central = 1250;

    public static TextDecoding Of(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith<byte>([0xEF, 0xBB, 0xBF])) return Utf8(bytes[3..], "encoding.utf-8-mark", marked: true);
        if (bytes.StartsWith<byte>([0xFF, 0xFE])) return Utf16(bytes[2..], "encoding.utf-16le-mark", bigEnd: false);
        if (bytes.StartsWith<byte>([0xFE, 0xFF])) return Utf16(bytes[2..], "encoding.utf-16be-mark", bigEnd: true);
        var (even, odd) = Zeros(bytes);
        // Latin letters in UTF-16 have a zero beside them; a text file of another kind has none.
        if (odd > even && odd * 4 > bytes.Length) return Utf16(bytes, "encoding.utf-16le", bigEnd: false);
        if (even > odd && even * 4 > bytes.Length) return Utf16(bytes, "encoding.utf-16be", bigEnd: true);
        return Ascii.IsValid(bytes) ? new(System.Text.Encoding.ASCII.GetString(bytes), Sentences.Say("encoding.ascii")) : Utf8(bytes, "encoding.utf-8", marked: false);
    }

    private static TextDecoding Utf8(ReadOnlySpan<byte> bytes, string name, bool marked)
    {
        var words = Sentences.Say(name);
        var (wide, line) = (0, 1);
        var rest = bytes;
        while (rest.Length > 0)
        {
            var status = Rune.DecodeFromUtf8(rest, out _, out var used);
            if (status == OperationStatus.Done)
            {
                if (used > 1) wide++;
                else if (rest[0] == '\n') line++;
            }
            else if (!marked && wide == 0) return CodePage(bytes);
            else return new("", words, status == OperationStatus.NeedMoreData ? "truncated" : "encoding-broken", line);
            rest = rest[used..];
        }
        return new(System.Text.Encoding.UTF8.GetString(bytes), words);
    }

    private static TextDecoding Utf16(ReadOnlySpan<byte> bytes, string name, bool bigEnd)
    {
        var words = Sentences.Say(name);
        if (bytes.Length % 2 == 1) return new("", words, "truncated");
        try
        {
            return new(new UnicodeEncoding(bigEnd, byteOrderMark: false, throwOnInvalidBytes: true).GetString(bytes), words);
        }
        catch (DecoderFallbackException)
        {
            return new("", words, "encoding-broken");
        }
    }

    private static TextDecoding CodePage(ReadOnlySpan<byte> bytes)
    {
        var detected = CharsetDetector.DetectFromBytes(bytes.ToArray()).Detected;
        var encoding = detected is { Confidence: >= Sure, Encoding: { IsSingleByte: true } told } && IsAnotherScript(told.CodePage)
            ? told : CodePagesEncodingProvider.Instance.GetEncoding(IsCentral(bytes) ? Central : Western)!;
        return new(encoding.GetString(bytes), encoding.CodePage == Western ? "Windows-1252" : encoding.WebName);
    }

    // Polish in a Central European page shows in the Western one as signs inside of words: "KS ¯urawie £êczna", "Dwa³a".
    private static bool IsCentral(ReadOnlySpan<byte> bytes)
    {
        var (west, central) = (CodePagesEncodingProvider.Instance.GetEncoding(Western)!.GetString(bytes), CodePagesEncodingProvider.Instance.GetEncoding(Central)!.GetString(bytes));
        for (var i = 0; i + 1 < west.Length; i++)
            if ("¹³¿£¯¥¼¾".Contains(west[i], StringComparison.Ordinal) && char.IsLetter(central[i]) && char.IsLetter(west[i + 1]) && (i > 0 && char.IsLetter(west[i - 1]) || west[i] is '£' or '¯' or '¥')) return true;
        return false;
    }

    // Cyrillic, Greek and Central European pages; the Western ones differ from Windows-1252 only in characters no list holds.
    private static bool IsAnotherScript(int page) => page is 1250 or 1251 or 1253 or 866 or 855 or 20866 or 21866 or 28592 or 28595 or 28597 or 10007;

    private static (int Even, int Odd) Zeros(ReadOnlySpan<byte> bytes)
    {
        var (even, odd) = (0, 0);
        for (var i = 0; i < bytes.Length; i++)
        {
            if (bytes[i] != 0) continue;
            if (i % 2 == 0) even++;
            else odd++;
        }
        return (even, odd);
    }
}
