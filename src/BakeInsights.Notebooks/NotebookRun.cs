using System.Collections.Immutable;
using BakeInsights.Reports;

namespace BakeInsights.Notebooks;

/// <summary>What running a notebook gave.</summary>
/// <param name="Notebook">The notebook with its settings as set and with the outputs of the cells that ran.</param>
/// <param name="Failure">The cell that failed, null if none did. The cells after it were not run.</param>
public sealed record NotebookRun(NotebookDocument Notebook, CellFailure? Failure)
{
    /// <summary>Journal, settings and versions, for the end of the page.</summary>
    public ImmutableArray<PageFact> Provenance { get; init; } = [];
}

/// <summary>A cell that failed.</summary>
/// <param name="Number">Its place among the code cells, from 1.</param>
/// <param name="Name">What a reader calls it; see <see cref="NotebookCell.Name"/>.</param>
/// <param name="Message">What went wrong, possibly several lines.</param>
public sealed record CellFailure(int Number, string Name, string Message);

/// <summary>How far a run has come.</summary>
/// <param name="Number">The code cell that is about to run, from 1.</param>
/// <param name="Count">How many code cells there are.</param>
/// <param name="Name">What a reader calls the cell.</param>
public sealed record CellProgress(int Number, int Count, string Name);
