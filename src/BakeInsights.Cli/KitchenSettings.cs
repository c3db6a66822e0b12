using System.ComponentModel;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What a command is asked that reckons with a kitchen, and prints for people.</summary>
internal abstract class KitchenSettings : JournalSettings
{
    [CommandOption("--kitchen <TEMPERATURE>")]
    [Description("The room, as 21C or 70F. Else the journal's median.")]
    public string? Kitchen { get; init; }

    [CommandOption("--flour-temp <TEMPERATURE>")]
    [Description("The flour. Else as warm as the room.")]
    public string? FlourTemp { get; init; }

    [CommandOption("--units <UNITS>")]
    [Description("The units that people read: metric or us. JSON stays metric.")]
    public string Units { get; init; } = UnitsOption.Metric;
}
