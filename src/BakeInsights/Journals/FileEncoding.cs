using System.Buffers;
using System.Text;
using System.Text.Unicode;

namespace BakeInsights;

/// <summary>Finds the encoding of a file from all its bytes, at constant memory.</summary>
internal static class FileEncoding
{
    private const int ChunkBytes = 1 << 16;
    private const int LongestUtf8Bytes = 4;
    private const int ProbeBytes = 8_192;
    private const int HeadBytes = 64;

    // Of the pairs of bytes at the head of a file, this part has an empty half in two-byte text: names of columns are ASCII.
    private const double PairsOfTwoByteText = 0.75;

    private static readonly byte[] ZipSignature = "PK\u0003\u0004"u8.ToArray();
    private static readonly byte[] CompoundFileSignature = [0xD0, 0xCF, 0x11, 0xE0];

    // The five bytes that Windows-1252 leaves without a letter (Unicode Consortium, CP1252.TXT).
    private static readonly SearchValues<byte> NotInWindows1252 = SearchValues.Create(0x81, 0x8D, 0x8F, 0x90, 0x9D);

    /// <summary>Windows-1252, what older spreadsheets of western Europe and America save as.</summary>
    public static Encoding Windows1252 { get; } = CodePagesEncodingProvider.Instance.GetEncoding(1252)!;

    /// <summary>The encoding, null for UTF-8; and whether the file has a quotation mark in it.</summary>
    /// <exception cref="JournalFileException">The file is empty, no text, or in no encoding known here.</exception>
    public static (Encoding? Encoding, bool HasQuotes) Of(string path, Stream stream)
    {
        var buffer = new byte[ChunkBytes];
        var filled = stream.ReadAtLeast(buffer, ChunkBytes, throwOnEndOfStream: false);
        var head = buffer.AsSpan(0, filled);
        RequireText(path, head);
        if (TwoByteEncoding(head) is { } encoding)
        {
            return (encoding, true);
        }

        if (head[..Math.Min(ProbeBytes, filled)].Contains((byte)0))
        {
            throw NotText(path);
        }

        return OfOneByteText(path, stream, buffer, filled);
    }

    private static (Encoding? Encoding, bool HasQuotes) OfOneByteText(string path, Stream stream, byte[] buffer, int filled)
    {
        var (isUtf8, is1252, hasQuotes, kept) = (true, !buffer.AsSpan().StartsWith("\uFEFF"u8), false, 0);
        while (filled > 0)
        {
            var isLast = filled < buffer.Length;
            var chunk = buffer.AsSpan(0, filled);
            var whole = isLast ? filled : filled - UnfinishedAtEnd(chunk);
            hasQuotes = hasQuotes || chunk.Contains((byte)'"');
            isUtf8 = isUtf8 && Utf8.IsValid(chunk[..whole]);
            is1252 = is1252 && !chunk.ContainsAny(NotInWindows1252);
            if (!isUtf8 && !is1252)
            {
                throw NotText(path);
            }

            kept = filled - whole;
            chunk[whole..].CopyTo(buffer);
            filled = isLast ? 0 : kept + stream.ReadAtLeast(buffer.AsSpan(kept), buffer.Length - kept, throwOnEndOfStream: false);
        }

        return (isUtf8 ? null : Windows1252, hasQuotes);
    }

    private static void RequireText(string path, ReadOnlySpan<byte> head)
    {
        if (head.IsEmpty)
        {
            throw new JournalFileException(path, "The file is empty.", "It needs a header line and a line for each bake.");
        }

        if (head.StartsWith(ZipSignature) || head.StartsWith(CompoundFileSignature))
        {
            throw new JournalFileException(
                path, "This is a workbook or an archive, not a CSV file.", "Save the sheet as CSV (UTF-8) and read that.");
        }
    }

    private static Encoding? TwoByteEncoding(ReadOnlySpan<byte> head)
    {
        if (head is [0xFF, 0xFE, not 0, ..] or [0xFF, 0xFE, 0, not 0, ..] or [0xFE, 0xFF, ..])
        {
            return head[0] == 0xFF ? Encoding.Unicode : Encoding.BigEndianUnicode;
        }

        head = head[..(Math.Min(head.Length, HeadBytes) & ~1)];
        var (first, second) = (0, 0);
        for (var i = 0; i < head.Length; i += 2)
        {
            first += head[i] == 0 && head[i + 1] != 0 ? 1 : 0;
            second += head[i] != 0 && head[i + 1] == 0 ? 1 : 0;
        }

        var needed = Math.Max(1, PairsOfTwoByteText * head.Length / 2);
        return second >= needed ? Encoding.Unicode : first >= needed ? Encoding.BigEndianUnicode : null;
    }

    // A letter of several bytes may be cut in two by the end of the chunk.
    private static int UnfinishedAtEnd(ReadOnlySpan<byte> chunk)
    {
        for (var back = 1; back < LongestUtf8Bytes && back <= chunk.Length; back++)
        {
            var octet = chunk[^back];
            if (octet >= 0xC0)
            {
                var length = octet >= 0xF0 ? 4 : octet >= 0xE0 ? 3 : 2;
                return length > back ? back : 0;
            }

            if (octet < 0x80)
            {
                return 0;
            }
        }

        return 0;
    }

    private static JournalFileException NotText(string path) => new(
        path, "The file holds bytes that are not text in UTF-8, UTF-16 or Windows-1252.", "Save the table as CSV (UTF-8) and read that.");
}
