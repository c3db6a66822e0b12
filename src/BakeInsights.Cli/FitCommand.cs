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
    public UnitSystem Units { get; init; }
}

/// <summary><c>bakeinsights fit</c>: both regressions of a journal and what they say.</summary>
internal sealed class FitCommand : Command<FitSettings>
{
    public override int Execute(CommandContext context, FitSettings settings, CancellationToken cancellationToken)
    {
        var journal = Journal.Read(settings.JournalPath);
        var riseTime = RiseTime.Ask(journal.Bakes);
        var loafVolume = LoafVolume.Ask(journal.Bakes);
        Console.Out.Write(settings.Json
            ? JsonText.Write(FitJson.From(journal, riseTime, loafVolume)) + "\n"
            : Text(journal, riseTime, loafVolume, settings.Units));
        return riseTime.Succeeded || loafVolume.Succeeded
            ? JournalSettings.ExitCodeFor(journal)
            : throw new CommandFailure(
                $"{settings.JournalPath} supports neither fit: " + riseTime.Match(_ => "", problem => $"{problem.Message} {problem.Remedy}"));
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
