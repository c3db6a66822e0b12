using System.Globalization;
using BakeInsights.TestKit;

namespace BakeInsights.Tests;

/// <summary>What R says, by tests/reference-data/r/compare.R.</summary>
internal static class CompareExpected
{
    private static readonly Dictionary<string, double> Values = File
        .ReadLines(Repository.ReferenceData("r/compare-expected.csv")).Skip(1)
        .ToDictionary(line => line[..line.LastIndexOf(',')], line => double.Parse(line[(line.LastIndexOf(',') + 1)..], CultureInfo.InvariantCulture));

    public static double Of(string name, string quantity) => Values[$"{name},{quantity}"];
}
