using System.Text;

namespace BakeInsights;

/// <summary>How a file of a journal is written: what a line put to its end has to keep to.</summary>
/// <param name="Encoding">The encoding of its text.</param>
/// <param name="Separator">What parts its cells.</param>
/// <param name="LineEnd">What ends its header, and so its lines.</param>
/// <param name="EndsItsLastLine">Whether its last line has an end.</param>
internal sealed record FileShape(Encoding Encoding, char Separator, string LineEnd, bool EndsItsLastLine)
{
    private const int Windows1252 = 1252;
    private const int BlockBytes = 1 << 16;

    /// <summary>The shape of a file; how its cells are parted is known from its reading.</summary>
    public static FileShape Of(string file, char separator)
    {
        using var stream = File.OpenRead(file);
        var encoding = EncodingOf(stream);
        return new FileShape(encoding, separator, LineEndOf(stream, encoding), EndsInLineEnd(stream, encoding));
    }

    /// <summary>The bytes that put one more line to the end of the file.</summary>
    /// <exception cref="EncoderFallbackException">The file's encoding has no bytes for one of the characters.</exception>
    public byte[] BytesOf(IReadOnlyList<string> cells) =>
        Encoding.GetBytes((EndsItsLastLine ? "" : LineEnd) + string.Join(Separator, cells.Select(Quoted)) + LineEnd);

    private static string LineEndOf(FileStream stream, Encoding encoding)
    {
        stream.Position = 0;
        using var reader = new StreamReader(stream, encoding, detectEncodingFromByteOrderMarks: true, leaveOpen: true);
        for (int letter; (letter = reader.Read()) >= 0;)
        {
            if (letter is '\n' or '\r')
            {
                return letter == '\n' ? "\n" : reader.Read() == '\n' ? "\r\n" : "\r";
            }
        }

        return "\n";
    }

    private static bool EndsInLineEnd(FileStream stream, Encoding encoding)
    {
        var last = new byte[encoding.GetByteCount("\n")];
        stream.Seek(-last.Length, SeekOrigin.End);
        stream.ReadExactly(last);
        return encoding.GetString(last) is "\n" or "\r";
    }

    private static Encoding EncodingOf(FileStream stream)
    {
        Span<byte> mark = stackalloc byte[2];
        stream.ReadAtLeast(mark, mark.Length, throwOnEndOfStream: false);
        if (mark is [0xFF, 0xFE] or [0xFE, 0xFF])
        {
            return new UnicodeEncoding(bigEndian: mark[0] == 0xFE, byteOrderMark: false, throwOnInvalidBytes: true);
        }

        stream.Position = 0;
        return IsUtf8(stream)
            ? new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true)
            : CodePagesEncodingProvider.Instance.GetEncoding(
                Windows1252, EncoderFallback.ExceptionFallback, DecoderFallback.ReplacementFallback)!;
    }

    private static bool IsUtf8(FileStream stream)
    {
        var decoder = new UTF8Encoding(false, throwOnInvalidBytes: true).GetDecoder();
        var block = new byte[BlockBytes];
        try
        {
            int count;
            do
            {
                count = stream.Read(block);
                decoder.GetCharCount(block.AsSpan(0, count), flush: count == 0);
            }
            while (count > 0);

            return true;
        }
        catch (DecoderFallbackException)
        {
            return false;
        }
    }

    private string Quoted(string cell) =>
        cell.Contains(Separator) || cell.AsSpan().IndexOfAny("\",") >= 0 || cell != cell.Trim()
            ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : cell;
}
