namespace BakeInsights.Notebooks;

/// <summary>A notebook as it is handed to a class: without what the class is to find out itself.</summary>
public static class StudentVersion
{
    /// <summary>The tag of a cell, code or words, that only the teacher gets.</summary>
    public const string SolutionTag = "solution";

    /// <summary>The notebook without its cells tagged <see cref="SolutionTag"/>; all others stay as they are.</summary>
    public static NotebookDocument Of(NotebookDocument notebook)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        return notebook.WithCells([.. notebook.Cells.Where(cell => !cell.Tags.Contains(SolutionTag))]);
    }
}
