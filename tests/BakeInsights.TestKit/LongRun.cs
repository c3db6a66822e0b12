using System.Globalization;

namespace BakeInsights.TestKit;

/// <summary>
/// Simulations of which a short run is a test, and a long run makes a table for the docs. With the environment
/// variable BAKEINSIGHTS_LONG_RUN set to 1 each runs 10,000 data sets and rewrites its table.
/// </summary>
public static class LongRun
{
    private const int LongDataSets = 10_000;

    private static bool IsOn => Environment.GetEnvironmentVariable("BAKEINSIGHTS_LONG_RUN") == "1";

    /// <summary>How many data sets to simulate.</summary>
    /// <param name="usually">In a short run.</param>
    /// <param name="atLength">In a long one.</param>
    public static int DataSets(int usually, int atLength = LongDataSets) => IsOn ? atLength : usually;

    /// <summary>Counts over data sets, each with a generator of its own, so that the order of work doesn't matter.</summary>
    public static T[] Simulate<T>(int dataSets, int seed, Func<Random, T> one)
    {
        var answers = new T[dataSets];
        Parallel.For(0, dataSets, k => answers[k] = one(new Random(unchecked((seed * 1_000_003) + k))));
        return answers;
    }

    /// <summary>Writes a table of the docs, if the run is a long one.</summary>
    public static void Write(string name, IEnumerable<string> lines)
    {
        if (IsOn)
        {
            File.WriteAllLines(Repository.Path($"docs/coverage/{name}.md"), lines);
        }
    }

    /// <summary>A share as percent with one decimal.</summary>
    public static string Percent(double share) => (100 * share).ToString("F1", CultureInfo.InvariantCulture);
}
