using System.Buffers.Text;
using CsvHelper;

namespace BakeInsights.Benchmarks;

/// <summary>What reading costs when nothing is checked: every cell that is a number is parsed, and that is all.</summary>
internal static class BareParse
{
    /// <summary>The sum of all numbers, so that no work can be left out.</summary>
    public static double Of(string path)
    {
        using var csv = CsvReader.FromFile(path, new CsvReaderOptions { Separator = ',' });
        var sum = 0.0;
        while (csv.Read())
        {
            for (var i = 0; i < csv.FieldCount; i++)
            {
                if (Utf8Parser.TryParse(csv.GetSpan(i), out double value, out _))
                {
                    sum += value;
                }
            }
        }

        return sum;
    }
}
