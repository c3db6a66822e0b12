using System.ComponentModel;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights tune</c> is asked.</summary>
internal sealed class TuneSettings : KitchenSettings
{
    [CommandOption("--ready-within <TIME>")]
    [Description("Wish: the first rise takes no longer than this, such as \"90 min\" or \"1 h 20\".")]
    public string? ReadyWithin { get; init; }

    [CommandOption("--volume-at-least <VOLUME>")]
    [Description("Wish: a loaf of at least this many mL for each g (cu in/oz with --units us), such as 4.2.")]
    public string? VolumeAtLeast { get; init; }

    [CommandOption("--crumb <RANGE>")]
    [Description("Wish: a crumb score between two scores, such as 3-5.")]
    public string? Crumb { get; init; }

    [CommandOption("--ready-by <TIME>")]
    [Description("Ask backwards: the dough temperature, or the yeast, that makes the dough ready then, as \"90 min\" after mixing, or 14:30 with --mixed-at.")]
    public string? ReadyBy { get; init; }

    [CommandOption("--mixed-at <TIME>")]
    [Description("When mixing ends, as 13:00, for a --ready-by that is a time of day.")]
    public string? MixedAt { get; init; }

    [CommandOption("--formula <NAME>")]
    [Description("The house formula: one of formulas.csv or of the bakes. Else the journal's typical dough.")]
    public string? Formula { get; init; }

    [CommandOption("--dough-temp <RANGE>")]
    [Description("Dough temperatures that you can make, such as 22-27, in the units asked for. Else those that were baked.")]
    public string? DoughTemp { get; init; }

    [CommandOption("--hydration <RANGE>")]
    [Description("Hydrations that you can handle, such as 62-70, in percent. Else those that were baked.")]
    public string? Hydration { get; init; }

    [CommandOption("--yeast <RANGE>")]
    [Description("Yeast that you can bake with, such as 0.6-1.4, in percent of flour as instant. Else what was.")]
    public string? Yeast { get; init; }

    [CommandOption("--taps <COLD,HOT>")]
    [Description("The cold and the hot tap, as 12C,55C. Else the journal's coldest water, and 45 °C.")]
    public string? Taps { get; init; }

    [CommandOption("--ice <G>")]
    [Description("Ice at hand, in grams. Else none.")]
    public string? Ice { get; init; }

    [CommandOption("--seed <NUMBER>")]
    [Description("Other draws of what is uncertain; else 1.")]
    public int Seed { get; init; } = 1;
}
