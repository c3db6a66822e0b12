using BakeInsights.Reports;

namespace BakeInsights.Notebooks;

/// <summary>Saves a run as a file: a page to read, or the executed notebook.</summary>
public static class RunFile
{
    /// <summary>The ending of a page's name.</summary>
    public const string PageExtension = ".html";

    /// <summary>The ending of a notebook's name.</summary>
    public const string NotebookExtension = ".ipynb";

    /// <summary>Whether the name's ending says which of the two to write.</summary>
    public static bool IsKnown(string path) => Is(path, PageExtension) || Is(path, NotebookExtension);

    /// <summary>
    /// Writes the file, whole or not at all. Both kinds carry the chart library and work without a network.
    /// </summary>
    /// <param name="run">The run.</param>
    /// <param name="path">The file, ending in <c>.html</c> or <c>.ipynb</c>; replaced if it exists.</param>
    /// <param name="title">What to call the page if the notebook has no heading.</param>
    /// <exception cref="IOException">The file can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder or the file may not be written.</exception>
    public static void Write(NotebookRun run, string path, string title)
    {
        ArgumentNullException.ThrowIfNull(run);
        if (!IsKnown(path))
        {
            throw new ArgumentException($"{path} ends neither in {PageExtension} nor in {NotebookExtension}.", nameof(path));
        }

        WholeFile.Write(path, writer =>
        {
            if (Is(path, NotebookExtension))
            {
                writer.Write(run.Notebook.ToJson());
            }
            else
            {
                NotebookPage.Write(ExecutedPage.From(run, title), writer);
            }
        });
    }

    private static bool Is(string path, string extension) =>
        Path.GetExtension(path).Equals(extension, StringComparison.OrdinalIgnoreCase);
}
