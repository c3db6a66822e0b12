using CsCheck;

namespace BakeInsights.Inference.Tests;

/// <summary>Arbitrary designs of a constant and one to four other columns, each with a response.</summary>
internal static class RandomDesigns
{
    public static readonly Gen<(Design Design, double[] Response)> Any =
        from rows in Gen.Int[8, 30]
        from columns in Gen.Double[-10, 10].Array[rows].Array[1, 4]
        from response in Gen.Double[-10, 10].Array[rows]
        select (Of(columns), response);

    private static Design Of(double[][] columns) => new(
        [DesignColumn.Constant(columns[0].Length), .. columns.Select((c, j) => new DesignColumn($"x{j + 1}", c))]);
}
