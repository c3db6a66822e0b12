namespace BakeInsights.Cli;

/// <summary>Names that may have been meant by one that is not known.</summary>
internal static class NearestNames
{
    /// <summary>"it has a, b, c", the names most like the one given first.</summary>
    public static string List(string given, IEnumerable<string> names) =>
        "it has " + string.Join(", ", names.OrderBy(name => Distance(given.ToLowerInvariant(), name.ToLowerInvariant())));

    // Levenshtein's distance: the letters to put in, take out or change.
    private static int Distance(string from, string to)
    {
        var above = Enumerable.Range(0, to.Length + 1).ToArray();
        foreach (var letter in from)
        {
            var diagonal = above[0]++;
            for (var i = 0; i < to.Length; i++)
            {
                var changed = diagonal + (letter == to[i] ? 0 : 1);
                diagonal = above[i + 1];
                above[i + 1] = Math.Min(changed, Math.Min(above[i], above[i + 1]) + 1);
            }
        }

        return above[^1];
    }
}
