using BakeInsights.TestKit;

namespace BakeInsights.Tests;

/// <summary>The demo journal and what is asked of it.</summary>
internal static class DemoJournal
{
    public const string Folder = "data-demo/millpond-lane";

    public static Journal Journal { get; } = BakeInsights.Journal.Read(Repository.Path(Folder));

    public static RiseTimeAnswer RiseTime { get; } = BakeInsights.RiseTime.Ask(Journal.Bakes).Value;

    public static LoafVolumeAnswer LoafVolume { get; } = BakeInsights.LoafVolume.Ask(Journal.Bakes).Value;
}
