using BakeInsights.Inference;
using BakeInsights.TestKit;

namespace BakeInsights.Reports.Tests;

/// <summary>The demo journal, and small journals made of it.</summary>
internal static class Demo
{
    public static Journal Journal { get; } = BakeInsights.Journal.Read(Repository.Path("data-demo/millpond-lane"));

    public static Attempt<RiseTimeAnswer> RiseTime { get; } = BakeInsights.RiseTime.Ask(Journal.Bakes);

    public static Attempt<LoafVolumeAnswer> LoafVolume { get; } = BakeInsights.LoafVolume.Ask(Journal.Bakes);

    /// <summary>What <c>fit</c> says of the demo journal, as text.</summary>
    public static string FitText(UnitSystem units) => string.Join("\n", FitViews(units).Select(view => view.ToText()));

    public static IReadOnlyList<View> FitViews(UnitSystem units) =>
    [
        JournalView.Of(Journal),
        RiseTimeView.Of(RiseTime, Journal.Bakes.Count, units),
        LoafVolumeView.Of(LoafVolume, Journal.Bakes.Count, units),
    ];

    /// <summary>The journal that a file of these lines is.</summary>
    public static Journal Read(params IEnumerable<string> lines)
    {
        using var folder = new TemporaryFolder();
        return BakeInsights.Journal.Read(folder.Write("bakes.csv", string.Join('\n', lines) + "\n"));
    }

    /// <summary>The demo journal's file with each line changed.</summary>
    public static Journal Changed(Func<string, string> change) =>
        Read(File.ReadLines(Repository.Path("data-demo/millpond-lane/bakes.csv")).Select(change));

    /// <summary>What comes of a function where this culture is the machine's.</summary>
    public static T Under<T>(string culture, Func<T> function)
    {
        var before = Thread.CurrentThread.CurrentCulture;
        Thread.CurrentThread.CurrentCulture = System.Globalization.CultureInfo.GetCultureInfo(culture);
        try
        {
            return function();
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }
}
