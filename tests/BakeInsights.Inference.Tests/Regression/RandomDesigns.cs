using CsCheck;

namespace BakeInsights.Inference.Tests;

/// <summary>Arbitrary designs of a constant and one to four other columns, each with a response.</summary>
internal static class RandomDesigns
{
    /// <summary>Numbers spread evenly, where Gen.Double makes whole columns of negligible ones.</summary>
    private static readonly Gen<double> Number = Gen.Int[-1_000_000, 1_000_000].Select(v => v / 100_000.0);

    public static readonly Gen<(Design Design, double[] Response)> Any =
        from rows in Gen.Int[8, 30]
        from columns in Number.Array[rows].Array[1, 4]
        from response in Number.Array[rows]
        select (Of(columns), response);

    private static Design Of(double[][] columns) => new(
        [DesignColumn.Constant(columns[0].Length), .. columns.Select((c, j) => new DesignColumn($"x{j + 1}", c))]);
}
