using System.Globalization;
using BakeInsights.TestKit;

namespace BakeInsights.Tests;

/// <summary>What R says, by tests/reference-data/r/columns.R.</summary>
internal static class RExpected
{
    private static readonly Dictionary<(string, string), double> Values = File
        .ReadLines(Repository.ReferenceData("r/columns-expected.csv")).Skip(1).Select(line => line.Split(','))
        .ToDictionary(cells => (cells[0], cells[1]), cells => double.Parse(cells[2], CultureInfo.InvariantCulture));

    public static double Of(string name, string quantity) => Values[(name, quantity)];
}
