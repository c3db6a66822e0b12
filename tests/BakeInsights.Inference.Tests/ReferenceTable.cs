using System.Globalization;
using BakeInsights.TestKit;

namespace BakeInsights.Inference.Tests;

/// <summary>A CSV file of tests/reference-data: a header, then rows of plain cells.</summary>
internal sealed class ReferenceTable
{
    private readonly string[] _header;
    private readonly string[][] _rows;

    private ReferenceTable(string[][] lines) => (_header, _rows) = (lines[0], lines[1..]);

    public int RowCount => _rows.Length;

    public IReadOnlyList<string> Header => _header;

    public static ReferenceTable Read(string file) =>
        new([.. File.ReadLines(Repository.ReferenceData(file)).Select(line => line.Split(','))]);

    public string[] Texts(string column) => [.. _rows.Select(row => row[Array.IndexOf(_header, column)])];

    public double[] Numbers(string column) => [.. Texts(column).Select(Number)];

    public DesignColumn Column(string column) => new(column, Numbers(column));

    /// <summary>The value beside a name, in a table of the columns quantity and value.</summary>
    public double Value(string quantity) => Numbers("value")[Array.IndexOf(Texts("quantity"), quantity)];

    public static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
