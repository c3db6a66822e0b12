using BakeInsights.Inference;

namespace BakeInsights.Benchmarks;

/// <summary>Data that resampling-and-mixed.R makes by the same arithmetic.</summary>
internal static class BenchmarkData
{
    /// <summary>A number between 0 and 1 that looks random, from its place alone.</summary>
    public static double Noise(int place)
    {
        var value = Math.Sin((place + 1) * 12.9898) * 43758.5453;
        return value - Math.Floor(value);
    }

    /// <summary>Sixty rows of a constant and three other columns, with a response.</summary>
    public static (Design Design, double[] Response) SixtyRows()
    {
        const int Rows = 60;
        var columns = Enumerable.Range(1, 3)
            .Select(j => new DesignColumn($"x{j}", [.. Enumerable.Range(0, Rows).Select(i => Noise((i * 10) + j))]))
            .ToArray();
        return (new Design([DesignColumn.Constant(Rows), .. columns]),
            [.. Enumerable.Range(0, Rows).Select(i => columns[0].Values[i] + Noise((i * 10) + 7))]);
    }

    /// <summary>Two thousand groups of twelve rows, with a level and a slope by group.</summary>
    public static (Design Design, double[] Response, string[] Groups) Groups()
    {
        const int Count = 2000, Size = 12;
        int[] rows = [.. Enumerable.Range(0, Count * Size)];
        double[] x = [.. rows.Select(i => Noise(3 * i))];
        double[] y =
        [
            .. rows.Select(i => 10 + (2 * x[i]) + (3 * Noise(200_000 + (i / Size)))
                + (2 * Noise(300_000 + (i / Size)) * x[i]) + Noise((3 * i) + 1) + Noise((3 * i) + 2)),
        ];
        return (new Design(DesignColumn.Constant(rows.Length), new DesignColumn("x", x)), y,
            [.. rows.Select(i => $"g{i / Size}")]);
    }
}
