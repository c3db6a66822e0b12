using CsvHelper;

namespace BakeInsights;

/// <summary>Finds the files that a path stands for, and says in words why one can't be read.</summary>
internal static class JournalFiles
{
    private const string Pattern = "bakes*.csv";

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

        var files = Listed(path);
        Array.Sort(files, StringComparer.Ordinal);
        return files.Length > 0
            ? files
            : throw new JournalFileException(
                path, $"The folder has no {Pattern} in it.", "Name the folder of a journal, or one CSV file of bakes.");
    }

    /// <summary>Opens a file to read it.</summary>
    public static FileStream Open(string file)
    {
        try
        {
            return File.OpenRead(file);
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException)
        {
            throw NotOpened(file, failure);
        }
    }

    /// <summary>What to tell of a failure while a file is read; null where it is told already, or is an error of the program.</summary>
    public static JournalFileException? Explain(string file, Exception failure) => failure switch
    {
        JournalFileException => null,
        CsvFormatException => new JournalFileException(
            file, $"A line is longer than {FileForm.LongestLineBytes / 1024} KiB.", "See that this is a journal of bakes.", failure),
        FileNotFoundException or DirectoryNotFoundException or UnauthorizedAccessException => NotOpened(file, failure),
        IOException => new JournalFileException(
            file, "The file could not be read to its end.", "See that its disk is there and whole, and read it again.", failure),
        _ => null,
    };

    /// <summary>What to tell of a file that lost bytes while it was read.</summary>
    public static JournalFileException Shortened(string file) => new(
        file, "The file became shorter while it was read.", "Let the program that writes it finish, and read it again.");

    /// <summary>What to tell of a file whose first line lacks a column that every row needs.</summary>
    public static JournalFileException WithoutHeader(string file, TableLayout layout, JournalColumn missing) => new(
        file,
        $"The first line has no column {missing}, so it is not the header of a table of {layout.Name}.",
        layout == BakeColumns.Layout
            ? "Start the file with a line of column names; 'bakeinsights new' writes one to copy."
            : $"Start the file with a line of column names, {string.Join(", ", layout.Required)} among them.");

    private static string[] Listed(string folder)
    {
        try
        {
            return Directory.GetFiles(folder, Pattern);
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException)
        {
            throw new JournalFileException(folder, "The folder can't be opened.", "See that it may be read.", failure);
        }
    }

    private static JournalFileException NotOpened(string file, Exception failure) => new(
        file, "The file can't be opened.", "See that it is there, that it may be read, and that no program holds it.", failure);
}
