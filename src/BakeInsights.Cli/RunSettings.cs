using System.ComponentModel;
using System.Globalization;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights run</c> is asked.</summary>
internal sealed class RunSettings : CommandSettings
{
    private const string HideNamesSetting = "hideNames";

    // A week: far above any notebook, far below what a timer takes.
    private const int LongestLimitMinutes = 7 * 24 * 60;

    [CommandArgument(0, "<notebook>")]
    [Description("The notebook to run, an .ipynb file. It is not changed.")]
    public required string Notebook { get; init; }

    [CommandOption("--journal <JOURNAL>")]
    [Description("The journal for the notebook: a folder, or a CSV file of bakes.")]
    public string? Journal { get; init; }

    [CommandOption("--units <UNITS>")]
    [Description("The units that people read: metric or us.")]
    public string? Units { get; init; }

    [CommandOption("--hide-names")]
    [Description("Write baker A, baker B and so on for the names of bakers and judges, in notes too.")]
    public bool HideNames { get; init; }

    [CommandOption("--set <NAME=VALUE>")]
    [Description("Another of the notebook's settings; may be given several times.")]
    public string[] Set { get; init; } = [];

    [CommandOption("--student")]
    [Description("Leave out the cells tagged solution, as for a class.")]
    public bool Student { get; init; }

    [CommandOption("--time-limit <MINUTES>")]
    [Description("Give up after so many minutes, and write nothing. Else there is no limit.")]
    public string? TimeLimit { get; init; }

    [CommandOption("--to <FILE>")]
    [Description("Where to write: FILE.html for a page, FILE.ipynb for the executed notebook. Else NOTEBOOK.html here.")]
    public string? To { get; init; }

    /// <summary>How long the run may take; without end if nothing was said.</summary>
    /// <exception cref="CommandFailure">It is no number of minutes.</exception>
    public TimeSpan Limit()
    {
        if (TimeLimit is null)
        {
            return Timeout.InfiniteTimeSpan;
        }

        return double.TryParse(TimeLimit, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var minutes)
            && minutes > 0 && minutes <= LongestLimitMinutes
            ? TimeSpan.FromMinutes(minutes)
            : throw new CommandFailure(FormattableString.Invariant(
                $"--time-limit {TimeLimit} can't be kept: give minutes as a number above 0 and up to {LongestLimitMinutes}, such as 5."));
    }

    /// <summary>The notebook's settings by name, a relative journal path made absolute.</summary>
    /// <exception cref="CommandFailure">A value is missing, given twice, or impossible.</exception>
    public IReadOnlyDictionary<string, string> NotebookSettings()
    {
        var values = new Dictionary<string, string>();
        foreach (var pair in Set.Select(NamedValue.Of))
        {
            Add(values, pair.Name, pair.Value);
        }

        Add(values, "journal", Journal);
        Add(values, "units", Units);
        Add(values, HideNamesSetting, HideNames ? "true" : null);
        if (values.TryGetValue("units", out var units) && units is not ("metric" or "us"))
        {
            throw new CommandFailure($"There are no units {units}: say metric or us.");
        }

        if (values.TryGetValue("journal", out var journal))
        {
            // The notebook runs in its own folder; the path was meant from here.
            values["journal"] = File.Exists(journal) || Directory.Exists(journal)
                ? Path.GetFullPath(journal)
                : throw new CommandFailure($"There is no journal {journal}: give a folder, or a CSV file of bakes.");
        }

        return values;
    }

    private static void Add(Dictionary<string, string> values, string name, string? value)
    {
        if (value is not null && !values.TryAdd(name, value))
        {
            throw new CommandFailure($"The setting {name} is given twice: give it once.");
        }
    }
}
