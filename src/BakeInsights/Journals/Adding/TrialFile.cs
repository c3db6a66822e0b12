namespace BakeInsights;

/// <summary>Reads a line that is not in the journal yet as the reader would read it there: below the file's first lines.</summary>
internal static class TrialFile
{
    // Enough for any header, and for the reader to see how the file writes its numbers and days.
    private const int MostBytes = 1 << 20;

    /// <summary>What the reader makes of the line.</summary>
    public static BakeEntryReading Read(BakeForm form, ReadOnlySpan<byte> line)
    {
        var folder = Directory.CreateTempSubdirectory("bakeinsights-");
        try
        {
            var file = Path.Combine(folder.FullName, Path.GetFileName(form.File));
            using (var beginning = new MemoryStream(form.Beginning))
            {
                AppendedFile.Write(beginning, file, line);
            }

            RowValues? last = null;
            var stream = BakeStream.Read(file, textsOf: int.MaxValue, row => last = row.Copy());
            var bake = last?.Line == stream.LastLine ? new Bake(last) : null;
            return new(bake, [.. stream.Reading.Notices.Where(notice => notice.Line == stream.LastLine)]);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>The first lines of a file, all of them if it is not long.</summary>
    public static byte[] Beginning(string file, FileShape shape)
    {
        using var stream = File.OpenRead(file);
        var bytes = new byte[Math.Min(MostBytes, stream.Length)];
        stream.ReadExactly(bytes);
        return bytes.Length == stream.Length ? bytes : WholeLines(bytes, shape);
    }

    private static byte[] WholeLines(byte[] bytes, FileShape shape)
    {
        // The file's last line may lack its end; the lines before never do.
        var end = shape.Encoding.GetBytes(shape.LineEnd);
        var length = bytes.AsSpan().LastIndexOf(end) + end.Length;
        return shape.EndsItsLastLine ? bytes[..length] : bytes[..(length - end.Length)];
    }
}
