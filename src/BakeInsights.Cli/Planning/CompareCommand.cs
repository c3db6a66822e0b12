using System.ComponentModel;
using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights compare</c> is asked.</summary>
internal sealed class CompareSettings : JournalSettings
{
    [CommandOption("--this <VALUE>")]
    [Description("The first way, as its column has it: a formula, or what --by says.")]
    public string? This { get; init; }

    [CommandOption("--that <VALUE>")]
    [Description("The second way.")]
    public string? That { get; init; }

    [CommandOption("--by <COLUMN>")]
    [Description("The column that tells the two apart; else formula.")]
    public string By { get; init; } = BakeColumns.Formula.Name;

    [CommandOption("--margin <PERCENT>")]
    [Description("How far two results may lie apart and still count as alike, in percent of the first; else 10.")]
    public double Margin { get; init; } = WaysWish.UsualMarginPct;

    [CommandOption("--units <UNITS>")]
    [Description("The units that people read: metric or us. JSON stays metric.")]
    public string Units { get; init; } = UnitsOption.Metric;

    /// <summary>The two ways.</summary>
    /// <exception cref="CommandFailure">One is missing, they are one, or the margin is none.</exception>
    public WaysWish Wish()
    {
        if (string.IsNullOrWhiteSpace(This) || string.IsNullOrWhiteSpace(That))
        {
            throw new CommandFailure("Two ways are compared: name them with --this and --that, such as --this \"lane loaf\" --that \"seed loaf\".");
        }

        if (string.IsNullOrWhiteSpace(By))
        {
            throw new CommandFailure("The column's name is blank: name one with --by, such as --by flour_kind.");
        }

        if (This.Trim().Equals(That.Trim(), StringComparison.OrdinalIgnoreCase))
        {
            throw new CommandFailure($"{This} is compared with itself: name another way with --that.");
        }

        return Margin is > 0 and < 100
            ? new WaysWish(By, This, That) { MarginPct = Margin }
            : throw new CommandFailure(FormattableString.Invariant($"--margin {Margin} is no margin: say a percentage above 0 and below 100, such as 10."));
    }
}

/// <summary><c>bakeinsights compare</c>: two formulas, or two ways of working, side by side.</summary>
internal sealed class CompareCommand : Command<CompareSettings>
{
    public override int Execute(CommandContext context, CompareSettings settings, CancellationToken cancellationToken)
    {
        var units = UnitsOption.Read(settings.Units);
        var wish = settings.Wish();
        var journal = Journal.Read(settings.RequirePath(), hidesNames: settings.HideNames);
        if (!TwoWays.Compare(journal.Bakes, wish).TryGet(out var ways, out var problem))
        {
            throw new CommandFailure($"{problem.Message} {problem.Remedy}".TrimEnd());
        }

        Console.Out.Write(settings.Json ? JsonText.Write(CompareJson.From(journal.Reading, ways)) + "\n" : CompareView.Of(ways, units).ToText());
        return ExitCode.Done;
    }
}
