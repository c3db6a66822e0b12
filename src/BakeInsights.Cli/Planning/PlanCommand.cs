using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary><c>bakeinsights plan</c>: a class's bakes, bench by bench.</summary>
internal sealed class PlanCommand : Command<PlanSettings>
{
    public override int Execute(CommandContext context, PlanSettings settings, CancellationToken cancellationToken)
    {
        var units = UnitsOption.Read(settings.Units);
        var journal = Journal.Read(settings.RequirePath(), hidesNames: settings.HideNames);
        if (!ClassPlan.Make(journal.Bakes, settings.Wish(journal.Bakes), settings.Seed).TryGet(out var plan, out var problem))
        {
            throw new CommandFailure($"{problem.Message} {problem.Remedy}");
        }

        Console.Out.Write(settings.Json ? JsonText.Write(PlanJson.From(journal.Reading, plan)) + "\n" : ClassPlanView.Of(plan, units).ToText());
        return ExitCode.Done;
    }
}
