namespace BakeInsights.Inference;

/// <summary>The ways of taking some of a number of rows.</summary>
internal static class Divisions
{
    /// <summary>How many ways there are; null if more than a million.</summary>
    public static int? Count(int rows, int taken)
    {
        const long Most = 1_000_000;
        long count = 1;
        for (var i = 1; i <= Math.Min(taken, rows - taken); i++)
        {
            count = count * (rows - i + 1) / i;
            if (count > Most)
            {
                return null;
            }
        }

        return (int)count;
    }

    /// <summary>All ways, each in increasing order of rows.</summary>
    public static IEnumerable<int[]> All(int rows, int taken)
    {
        int[] chosen = [.. Enumerable.Range(0, taken)];
        while (true)
        {
            yield return [.. chosen];
            var place = taken - 1;
            while (place >= 0 && chosen[place] == rows - taken + place)
            {
                place--;
            }

            if (place < 0)
            {
                yield break;
            }

            chosen[place]++;
            for (var next = place + 1; next < taken; next++)
            {
                chosen[next] = chosen[next - 1] + 1;
            }
        }
    }
}
