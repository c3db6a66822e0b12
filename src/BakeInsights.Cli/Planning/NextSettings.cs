using System.ComponentModel;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights next</c> is asked.</summary>
internal sealed class NextSettings : JournalSettings
{
    [CommandOption("--bakes <COUNT>")]
    [Description("How many bakes to plan, 1 to 24; else 4.")]
    public int Bakes { get; init; } = NextBakesWish.UsualBakes;

    [CommandOption("--question <NAME>")]
    [Description("What to narrow: best_hydration, rise_by_dough_temperature, rise_by_yeast or rise_by_hydration. Else what the journal leaves most open.")]
    public string? Question { get; init; }

    [CommandOption("--dough-temp <RANGE>")]
    [Description("Dough temperatures that you can make, such as 22-27, in the units asked for. Else those that were baked.")]
    public string? DoughTemp { get; init; }

    [CommandOption("--hydration <RANGE>")]
    [Description("Hydrations that you can bake, such as 60-72, in percent. Else those that were baked.")]
    public string? Hydration { get; init; }

    [CommandOption("--yeast <RANGE>")]
    [Description("Yeast that you can bake with, such as 0.6-1.4, in percent of flour as instant. Else what was.")]
    public string? Yeast { get; init; }

    [CommandOption("--until <NUMBER>")]
    [Description("Count the bakes until the answer is known to plus or minus this: points of hydration, or percent of the rise time.")]
    public double? Until { get; init; }

    [CommandOption("--units <UNITS>")]
    [Description("The units that people read: metric or us. JSON stays metric.")]
    public string Units { get; init; } = UnitsOption.Metric;

    [CommandOption("--seed <NUMBER>")]
    [Description("Another order of the bakes, and other made-up outcomes; else 1.")]
    public int Seed { get; init; } = 1;

    /// <summary>The wish that the options say.</summary>
    /// <exception cref="CommandFailure">An option asks for what can't be.</exception>
    public NextBakesWish Wish()
    {
        var units = UnitsOption.Read(Units);
        if (Bakes is < 1 or > NextBakesWish.MostBakes)
        {
            throw new CommandFailure(FormattableString.Invariant(
                $"--bakes {Bakes} can't be planned: say 1 to {NextBakesWish.MostBakes}, and plan again after these."));
        }

        if (Until is { } until && !(until > 0 && double.IsFinite(until)))
        {
            throw new CommandFailure(FormattableString.Invariant($"--until {until} can't be reached: say a number above 0, such as 2."));
        }

        return new NextBakesWish
        {
            Bakes = Bakes,
            Question = Question is null ? null : NarrowedQuestion.All.FirstOrDefault(question => question.Name == Question)
                ?? throw new CommandFailure($"There is no question {Question}: say {string.Join(", ", NarrowedQuestion.All.Select(question => question.Name))}."),
            DoughTemperatureC = BakingLimits.DoughTemperature(DoughTemp, units),
            HydrationPct = BakingLimits.Hydration(Hydration),
            YeastPct = BakingLimits.Yeast(Yeast),
            Until = Until,
            Units = units,
        };
    }
}
