namespace BakeInsights.Inference.Tests;

/// <summary>Expected values computed by R with tests/reference-data/r/methods.R.</summary>
internal static class MethodsExpected
{
    private static readonly ReferenceTable Table = ReferenceTable.Read("r/methods-expected.csv");
    private static readonly Dictionary<(string, string), double> Values = Table.Texts("case")
        .Zip(Table.Texts("quantity"), Table.Numbers("value"))
        .ToDictionary(row => (row.First, row.Second), row => row.Third);

    public static double Of(string name, string quantity) => Values[(name, quantity)];

    public static IEnumerable<(string Quantity, double Value)> All(string name) =>
        Values.Where(pair => pair.Key.Item1 == name).Select(pair => (pair.Key.Item2, pair.Value));
}
