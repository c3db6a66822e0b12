using BakeInsights.Notebooks;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary><c>bakeinsights run</c>: runs a notebook and writes what it says as a page or as an executed notebook.</summary>
internal sealed class RunCommand : AsyncCommand<RunSettings>
{
    private const string JournalSetting = "journal";

    public override async Task<int> ExecuteAsync(
        CommandContext context, RunSettings settings, CancellationToken cancellationToken)
    {
        var title = Path.GetFileNameWithoutExtension(settings.Notebook);
        var target = settings.To ?? title + RunFile.PageExtension;
        CheckTarget(settings.Notebook, target);

        var run = await RunAsync(settings, cancellationToken);
        RunFile.Write(settings.HideNames ? WithoutPath(run) : run, target, title);
        if (run.Failure is { } failure)
        {
            throw new CommandFailure(
                $"Cell {failure.Number} ({failure.Name}) failed: {failure.Message.Split('\n')[0].TrimEnd('.')}. "
                + $"See it in place in {target}.");
        }

        Console.Out.WriteLine(target);
        return ExitCode.Done;
    }

    private static async Task<NotebookRun> RunAsync(RunSettings settings, CancellationToken stopped)
    {
        var limit = settings.Limit();
        var read = NotebookDocument.Read(settings.Notebook);
        var notebook = NotebookSettings.Apply(settings.Student ? StudentVersion.Of(read) : read, settings.NotebookSettings());
        var folder = Path.GetDirectoryName(Path.GetFullPath(settings.Notebook))!;
        var place = "before the first cell";
        using var late = new CancellationTokenSource(limit);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(stopped, late.Token);
        using var line = new ProgressLine();
        line.Show("Starting");
        try
        {
            return await NotebookRunner.RunAsync(
                notebook,
                folder,
                cell =>
                {
                    place = $"in cell {cell.Number} of {cell.Count} ({cell.Name})";
                    line.Show($"Cell {cell.Number} of {cell.Count}: {cell.Name}");
                },
                either.Token);
        }
        catch (OperationCanceledException) when (late.IsCancellationRequested && !stopped.IsCancellationRequested)
        {
            throw new CommandFailure(
                $"Stopped at the time limit of {settings.TimeLimit} min, {place}; nothing was written. Give it more with --time-limit.");
        }
        catch (OperationCanceledException)
        {
            throw new CommandFailure($"Stopped {place}; nothing was written.");
        }
    }

    // The settings stand on the page too, and a journal's folder is often called after its baker.
    private static NotebookRun WithoutPath(NotebookRun run) => NotebookSettings.Names(run.Notebook).Contains(JournalSetting)
        ? run with { Notebook = NotebookSettings.Apply(run.Notebook, new Dictionary<string, string> { [JournalSetting] = "(not shown)" }) }
        : run;

    // Before the run, which takes a while.
    private static void CheckTarget(string notebook, string target)
    {
        if (!RunFile.IsKnown(target))
        {
            throw new CommandFailure(
                $"{target} can't be written: give a name that ends in {RunFile.PageExtension} or {RunFile.NotebookExtension}.");
        }

        if (Path.GetFullPath(target).Equals(Path.GetFullPath(notebook), StringComparison.OrdinalIgnoreCase))
        {
            throw new CommandFailure($"{target} is the notebook itself: give another name with --to.");
        }

        var folder = Path.GetDirectoryName(Path.GetFullPath(target))!;
        if (!Directory.Exists(folder))
        {
            throw new CommandFailure($"There is no folder {folder}: make it, or give another name with --to.");
        }
    }
}
