using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary><c>bakeinsights next</c>: what to bake next, and what it may be expected to bring.</summary>
internal sealed class NextCommand : Command<NextSettings>
{
    public override int Execute(CommandContext context, NextSettings settings, CancellationToken cancellationToken)
    {
        var wish = settings.Wish();
        var journal = Journal.Read(settings.RequirePath(), hidesNames: settings.HideNames);
        using (var progress = new LateProgress())
        {
            if (!NextBakes.Plan(journal.Bakes, wish, settings.Seed, progress.Show).TryGet(out var plan, out var problem))
            {
                throw new CommandFailure($"{problem.Message} {problem.Remedy}");
            }

            progress.Dispose();
            Console.Out.Write(settings.Json
                ? JsonText.Write(NextJson.From(journal.Reading, plan)) + "\n"
                : NextBakesView.Of(plan, journal.Bakes.Count, wish.Units).ToText());
        }

        return ExitCode.Done;
    }
}
