using System.Globalization;
using Microsoft.DotNet.Interactive.Formatting;

namespace BakeInsights.Notebooks;

/// <summary>
/// Runs notebooks in this process, without an editor, Jupyter or a network. One run at a time: a run sets the
/// process's current directory, culture and formatters.
/// </summary>
public static class NotebookRunner
{
    private static readonly SemaphoreSlim OneAtATime = new(1);

    /// <summary>
    /// Runs the code cells from the first to the last, with the notebook's folder as the current directory, and stops
    /// at the first that fails. <c>#r "nuget: BakeInsights..."</c> is answered with this very build.
    /// </summary>
    /// <param name="path">The notebook. The file is read only.</param>
    /// <param name="settings">New values for its settings; see <see cref="NotebookSettings.Apply"/>.</param>
    /// <param name="progress">Called before each code cell; null for none.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="NotebookException">The notebook can't be read, or its settings can't be set so.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static Task<NotebookRun> RunAsync(
        string path,
        IReadOnlyDictionary<string, string> settings,
        Action<CellProgress>? progress = null,
        CancellationToken cancellation = default) => RunAsync(
            NotebookSettings.Apply(NotebookDocument.Read(path), settings),
            Path.GetDirectoryName(Path.GetFullPath(path))!,
            progress,
            cancellation);

    /// <summary>The same for a notebook that has been read, its settings set.</summary>
    /// <param name="notebook">The notebook.</param>
    /// <param name="folder">The current directory for its cells.</param>
    /// <param name="progress">Called before each code cell; null for none.</param>
    /// <param name="cancellation">
    /// Stops the run between cells and within one; a cell that waits for nothing is left to itself, and goes on until
    /// the process ends.
    /// </param>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static async Task<NotebookRun> RunAsync(
        NotebookDocument notebook, string folder, Action<CellProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        ArgumentException.ThrowIfNullOrEmpty(folder);
        await OneAtATime.WaitAsync(cancellation);
        var before = Directory.GetCurrentDirectory();
        var culture = CultureInfo.DefaultThreadCurrentCulture;
        try
        {
            CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
            Directory.SetCurrentDirectory(folder);
            Formatter.ResetToDefault();
            using var kernel = new NotebookKernel();
            var run = await RunCellsAsync(notebook, kernel, progress, cancellation);
            return run with { Provenance = RunProvenance.Of(notebook, Directory.GetCurrentDirectory()) };
        }
        finally
        {
            Directory.SetCurrentDirectory(before);
            CultureInfo.DefaultThreadCurrentCulture = culture;
            OneAtATime.Release();
        }
    }

    private static async Task<NotebookRun> RunCellsAsync(
        NotebookDocument notebook, NotebookKernel kernel, Action<CellProgress>? progress, CancellationToken cancellation)
    {
        var cells = notebook.Cells.Select(cell => cell with { Outputs = [], ExecutionCount = null }).ToArray();
        var code = Enumerable.Range(0, cells.Length).Where(i => cells[i].IsCode).ToArray();
        CellFailure? failure = null;
        for (var n = 1; n <= code.Length && failure is null; n++)
        {
            cancellation.ThrowIfCancellationRequested();
            var cell = cells[code[n - 1]];
            progress?.Invoke(new CellProgress(n, code.Length, cell.Name));
            var outputs = CellOutputs.From(await kernel.RunAsync(cell, cancellation).WaitAsync(cancellation));
            cancellation.ThrowIfCancellationRequested();
            cells[code[n - 1]] = cell with { Outputs = outputs, ExecutionCount = n };
            if (outputs.OfType<CellError>().FirstOrDefault() is { } error)
            {
                failure = new CellFailure(n, cell.Name, error.Message);
            }
        }

        return new NotebookRun(notebook.WithCells([.. cells]), failure);
    }
}
