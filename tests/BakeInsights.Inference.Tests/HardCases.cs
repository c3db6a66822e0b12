namespace BakeInsights.Inference.Tests;

/// <summary>Data that are hard on a method: it has to answer with finite numbers or with a problem.</summary>
internal static class HardCases
{
    private static readonly double[] X = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
    private static readonly double[] Y = [2.1, 2.9, 4.2, 4.8, 6.1, 7.3, 7.7, 9.2, 9.9, 11.3, 11.8, 13.1];

    /// <summary>A name, the predictor columns without a constant, and the response.</summary>
    public static readonly IReadOnlyList<(string Name, double[][] Columns, double[] Response)> All =
    [
        ("sound", [X], Y),
        ("one row", [[1]], [2]),
        ("two rows", [[1, 2]], [2, 3]),
        ("three rows", [[1, 2, 3]], [2, 3, 5]),
        ("constant column", [[.. X.Select(_ => 7.0)]], Y),
        ("column of zeros", [[.. X.Select(_ => 0.0)]], Y),
        ("collinear columns", [X, [.. X.Select(x => 3 * x)]], Y),
        ("nearly collinear columns", [X, [.. X.Select((x, i) => x + (1e-9 * (i % 3)))]], Y),
        ("one group", [[.. X.Select(_ => 1.0)]], Y),
        ("group of one row", [[.. X.Select(x => x == 12 ? 1.0 : 0)]], Y),
        ("all tied", [X], [.. X.Select(_ => 4.0)]),
        ("mostly tied", [X], [.. X.Select(x => x == 6 ? 5.0 : 4.0)]),
        ("two values", [X], [.. X.Select(x => x % 2)]),
        ("perfect line", [X], [.. X.Select(x => 3 + (2 * x))]),
        ("line but for one row", [X], [.. X.Select(x => x == 12 ? 99 : 3 + (2 * x))]),
        ("missing predictor", [[.. X.Select(x => x == 3 ? double.NaN : x)]], Y),
        ("missing response", [X], [.. Y.Select(y => y > 12 ? double.NaN : y)]),
        ("infinite predictor", [[.. X.Select(x => x == 3 ? double.PositiveInfinity : x)]], Y),
        ("huge scales", [[.. X.Select(x => 1e70 * x)]], [.. Y.Select(y => 1e70 * y)]),
        ("tiny scales", [[.. X.Select(x => 1e-70 * x)]], [.. Y.Select(y => 1e-70 * y)]),
        ("tiny against huge", [[.. X.Select(x => 1e-70 * x)]], [.. Y.Select(y => 1e70 * y)]),
        ("huge against tiny", [[.. X.Select(x => 1e70 * x)]], [.. Y.Select(y => 1e-70 * y)]),
        ("out of range", [[.. X.Select(x => 1e200 * x)]], Y),
        ("small spread on a large level", [[.. X.Select(x => 1e8 + x)]], [.. Y.Select(y => 1e8 + y)]),
        ("one wild row", [[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 1e9]], [.. Y[..11], -1e9]),
    ];

    /// <summary>The names, for theories.</summary>
    public static IEnumerable<object[]> Names => All.Select(entry => new object[] { entry.Name });

    /// <summary>The design with a constant, and the response.</summary>
    public static (Design Design, double[] Response) Of(string name)
    {
        var (_, columns, response) = All.Single(entry => entry.Name == name);
        return (
            new Design([
                DesignColumn.Constant(response.Length), .. columns.Select((c, j) => new DesignColumn($"x{j + 1}", c))]),
            response);
    }
}
