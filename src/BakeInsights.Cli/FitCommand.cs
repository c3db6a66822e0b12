using System.ComponentModel;
using BakeInsights.Inference;
using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights fit</c> is asked.</summary>
internal sealed class FitSettings : JournalSettings
{
    [CommandOption("--units <UNITS>")]
    [Description("The units that people read: metric or us. JSON stays metric.")]
    public string Units { get; init; } = UnitsOption.Metric;
}

/// <summary><c>bakeinsights fit</c>: both regressions of a journal and what they say.</summary>
internal sealed class FitCommand : Command<FitSettings>
{
    public override int Execute(CommandContext context, FitSettings settings, CancellationToken cancellationToken)
    {
        var units = UnitsOption.Read(settings.Units);
        var journal = Read(settings);
        var riseTime = RiseTime.Ask(journal.Bakes);
        var loafVolume = LoafVolume.Ask(journal.Bakes);
        Console.Out.Write(settings.Json
            ? JsonText.Write(FitJson.From(journal.Reading, riseTime, loafVolume)) + "\n"
            : Text(journal, riseTime, loafVolume, units));
        return riseTime.Succeeded || loafVolume.Succeeded
            ? JournalSettings.ExitCodeFor(journal.Reading)
            : throw new CommandFailure(
                $"{settings.JournalPath} supports neither fit: " + riseTime.Match(_ => "", problem => $"{problem.Message} {problem.Remedy}"));
    }

    private static Journal Read(FitSettings settings)
    {
        var journal = Journal.Read(settings.RequirePath());
        return settings.HideNames ? HiddenNames.Of(journal).In(journal) : journal;
    }

    private static string Text(
        Journal journal, Attempt<RiseTimeAnswer> riseTime, Attempt<LoafVolumeAnswer> loafVolume, UnitSystem units)
    {
        View[] views =
        [
            JournalView.Of(journal),
            RiseTimeView.Of(riseTime, journal.Bakes.Count, units),
            LoafVolumeView.Of(loafVolume, journal.Bakes.Count, units),
        ];
        return string.Join("\n", views.Select(view => view.ToText()));
    }
}
