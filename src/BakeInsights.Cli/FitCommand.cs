using System.ComponentModel;
using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights fit</c> is asked.</summary>
internal sealed class FitSettings : JournalSettings
{
    private const string Metric = "metric";
    private const string Us = "us";

    [CommandOption("--units <UNITS>")]
    [Description("The units that people read: metric or us. JSON stays metric.")]
    public string Units { get; init; } = Metric;

    /// <summary>The system of units.</summary>
    /// <exception cref="CommandFailure">There is none of that name.</exception>
    public UnitSystem UnitSystem() => Units switch
    {
        Metric => BakeInsights.UnitSystem.Metric,
        Us => BakeInsights.UnitSystem.Us,
        _ => throw new CommandFailure($"There are no units {Units}: say {Metric} or {Us}."),
    };
}

/// <summary><c>bakeinsights fit</c>: both regressions of a journal and what they say.</summary>
internal sealed class FitCommand : Command<FitSettings>
{
    public override int Execute(CommandContext context, FitSettings settings, CancellationToken cancellationToken)
    {
        var units = settings.UnitSystem();
        var fit = JournalFit.Of(settings.RequirePath());
        Console.Out.Write(settings.Json ? JsonText.Write(FitJson.From(fit)) + "\n" : Text(fit, units));
        return fit.RiseTime.Succeeded || fit.LoafVolume.Succeeded
            ? JournalSettings.ExitCodeFor(fit.Reading)
            : throw new CommandFailure(
                $"{settings.JournalPath} supports neither fit: " + fit.RiseTime.Match(_ => "", problem => $"{problem.Message} {problem.Remedy}"));
    }

    private static string Text(JournalFit fit, UnitSystem units)
    {
        View[] views =
        [
            JournalView.Of(fit.Reading),
            RiseTimeView.Of(fit.RiseTime, fit.Reading.Bakes, units),
            LoafVolumeView.Of(fit.LoafVolume, fit.Reading.Bakes, units),
        ];
        return string.Join("\n", views.Select(view => view.ToText()));
    }
}
