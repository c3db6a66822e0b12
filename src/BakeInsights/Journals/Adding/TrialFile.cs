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
            using (var beginning = new MemoryStream(Beginning(form)))
            {
                AppendedFile.Write(beginning, file, line);
            }

            RowValues? last = null;
            var stream = BakeStream.Read(file, keepsTexts: true, row => last = row.Copy());
            var bake = last?.Line == stream.LastLine ? new Bake(last) : null;
            return new(bake, [.. stream.Reading.Notices.Where(notice => notice.Line == stream.LastLine)]);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static byte[] Beginning(BakeForm form)
    {
        using var file = File.OpenRead(form.File);
        var bytes = new byte[Math.Min(MostBytes, file.Length)];
        file.ReadExactly(bytes);
        return bytes.Length == file.Length ? bytes : WholeLines(bytes, form.Shape);
    }

    private static byte[] WholeLines(byte[] bytes, FileShape shape)
    {
        // The file's last line may lack its end; the lines before never do.
        var end = shape.Encoding.GetBytes(shape.LineEnd);
        var length = bytes.AsSpan().LastIndexOf(end) + end.Length;
        return shape.EndsItsLastLine ? bytes[..length] : bytes[..(length - end.Length)];
    }
}
