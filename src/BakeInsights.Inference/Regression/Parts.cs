namespace BakeInsights.Inference;

/// <summary>Cuts many rows into parts of a fixed size, whatever the number of processors.</summary>
internal static class Parts
{
    private const int Rows = 16_384;

    /// <summary>How many parts there are, at least one.</summary>
    public static int CountFor(int rows) => Math.Max(1, (rows + Rows - 1) / Rows);

    /// <summary>Calls with the number of each part, its first row and the row after its last, side by side.</summary>
    public static void ForEach(int rows, Action<int, int, int> action)
    {
        var count = CountFor(rows);
        if (count == 1)
        {
            action(0, 0, rows);
            return;
        }

        Parallel.For(0, count, part => action(part, part * Rows, Math.Min(rows, (part + 1) * Rows)));
    }
}
