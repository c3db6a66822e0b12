namespace BakeInsights;

/// <summary>Finds the files of bakes that a path stands for, and refuses those that are no table of text.</summary>
internal static class JournalFiles
{
    private const string Pattern = "bakes*.csv";
    private const int ProbeBytes = 8_192;

    private static readonly byte[] ZipSignature = "PK\u0003\u0004"u8.ToArray();

    /// <summary>The one file, or a folder's files of bakes in the order of their names.</summary>
    public static IReadOnlyList<string> Find(string path)
    {
        if (File.Exists(path))
        {
            return [path];
        }

        if (!Directory.Exists(path))
        {
            throw new JournalFileException(
                path, "There is no such file or folder.", "Check the spelling, or start a journal with 'bakeinsights new'.");
        }

        var files = Directory.GetFiles(path, Pattern);
        Array.Sort(files, StringComparer.Ordinal);
        return files.Length > 0
            ? files
            : throw new JournalFileException(
                path, $"The folder has no {Pattern} in it.", "Name the folder of a journal, or one CSV file of bakes.");
    }

    /// <summary>Refuses an empty file, and one that holds something other than text.</summary>
    public static void RequireText(string file)
    {
        Span<byte> probe = stackalloc byte[ProbeBytes];
        using var stream = Open(file);
        probe = probe[..stream.ReadAtLeast(probe, ProbeBytes, throwOnEndOfStream: false)];
        if (probe.IsEmpty)
        {
            throw new JournalFileException(file, "The file is empty.", "It needs a header line and a line for each bake.");
        }

        if (probe.StartsWith(ZipSignature))
        {
            throw new JournalFileException(
                file, "This is a workbook or an archive, not a CSV file.", "Save the sheet as CSV (UTF-8) and read that.");
        }

        if (probe.Contains((byte)0))
        {
            throw new JournalFileException(
                file, "The file holds bytes that are not text in UTF-8.", "Save the table as CSV (UTF-8) and read that.");
        }
    }

    private static FileStream Open(string file)
    {
        try
        {
            return File.OpenRead(file);
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException)
        {
            throw new JournalFileException(
                file, "The file can't be opened.", "See that it may be read and that no program holds it.", failure);
        }
    }
}
