using System.Text;

namespace BakeInsights;

/// <summary>How a file of a journal is written: what a line put to its end has to keep to.</summary>
/// <param name="Encoding">The encoding of its text.</param>
/// <param name="Separator">What parts its cells.</param>
/// <param name="LineEnd">What ends its header, and so its lines.</param>
/// <param name="EndsItsLastLine">Whether its last line has an end.</param>
internal sealed record FileShape(Encoding Encoding, char Separator, string LineEnd, bool EndsItsLastLine)
{
    /// <summary>The shape of a file; how its cells are parted is known from its reading.</summary>
    public static FileShape Of(string file, char separator)
    {
        using var stream = File.OpenRead(file);
        var encoding = EncodingOf(file, stream);
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

    // As it was found for reading, and strict: what the file's encoding has no bytes for is refused, not replaced.
    private static Encoding EncodingOf(string file, FileStream stream)
    {
        var found = FileEncoding.Of(file, stream).Encoding ?? Encoding.UTF8;
        return found == FileEncoding.Windows1252
            ? CodePagesEncodingProvider.Instance.GetEncoding(
                found.CodePage, EncoderFallback.ExceptionFallback, DecoderFallback.ReplacementFallback)!
            : Encoding.GetEncoding(found.CodePage, EncoderFallback.ExceptionFallback, DecoderFallback.ReplacementFallback);
    }

    private string Quoted(string cell) =>
        cell.Contains(Separator) || cell.AsSpan().IndexOfAny("\",") >= 0 || cell != cell.Trim()
            ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : cell;
}
