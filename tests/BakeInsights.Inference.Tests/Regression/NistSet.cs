using MathNet.Numerics.LinearRegression;

namespace BakeInsights.Inference.Tests;

/// <summary>A linear set of the NIST Statistical Reference Datasets, with its fit and the digits reached.</summary>
internal sealed class NistSet
{
    /// <summary>NIST's level of difficulty and the degree of the polynomial; 0 marks a multiple regression.</summary>
    public static readonly IReadOnlyList<(string Name, string Difficulty, int Degree)> All =
    [
        ("Norris", "lower", 1), ("Pontius", "lower", 2), ("NoInt1", "average", 1), ("NoInt2", "average", 1),
        ("Filip", "higher", 10), ("Longley", "higher", 0), ("Wampler1", "higher", 5), ("Wampler2", "higher", 5),
        ("Wampler3", "higher", 5), ("Wampler4", "higher", 5), ("Wampler5", "higher", 5),
    ];

    private readonly int _degree;
    private readonly bool _hasConstant;
    private readonly Dictionary<string, double> _certified;
    private readonly double[] _y;
    private readonly double[][] _x;

    public NistSet(string name)
    {
        _degree = All.Single(set => set.Name == name).Degree;
        var values = ReferenceTable.Read("nist/certified.csv");
        _certified = values.Texts("set").Zip(values.Texts("quantity"), values.Numbers("value"))
            .Where(row => row.First == name)
            .ToDictionary(row => row.Second, row => row.Third);
        _hasConstant = _certified.ContainsKey("B0");
        var data = ReferenceTable.Read($"nist/{name}.csv");
        _y = data.Numbers("y");
        _x = [.. data.Header.Skip(1).Select(data.Numbers)];
        Fit = LeastSquares.Fit(Design(), _y).Value;
    }

    public LeastSquaresFit Fit { get; }

    public double CoefficientDigits => WorstCoefficient([.. Fit.Terms.Select(term => term.Estimate)]);

    public double DeviationDigits => WorstDeviation([.. Fit.Terms.Select(term => term.StandardError)]);

    public double ResidualDigits => Close.Digits(Fit.ResidualStandardDeviation, _certified["residual SD"]);

    public double RSquaredDigits => Close.Digits(Fit.RSquared, _certified["R-squared"]);

    /// <summary>The digits over coefficients and their standard deviations.</summary>
    public double Digits => Math.Min(CoefficientDigits, DeviationDigits);

    /// <summary>The digits that the exact fit of the data as rounded to doubles shares with the certified one.</summary>
    public double InputLimit
    {
        get
        {
            var exact = Exact();
            return Math.Min(WorstCoefficient(exact.Coefficients), WorstDeviation(exact.Deviations));
        }
    }

    /// <summary>The digits that the fit shares with the exact fit of the very same doubles.</summary>
    public double DigitsAgainstExact
    {
        get
        {
            var exact = Exact();
            return Fit.Terms.Select((term, j) => Math.Min(
                Close.Digits(term.Estimate, exact.Coefficients[j]),
                Close.Digits(term.StandardError, exact.Deviations[j]))).Min();
        }
    }

    /// <summary>The digits of Math.NET's own coefficients; it gives no standard deviations.</summary>
    public double LibraryDigits
    {
        get
        {
            var rows = Enumerable.Range(0, _y.Length)
                .Select(i => PlainColumns().Select(column => column[i]).ToArray()).ToArray();
            return WorstCoefficient(MultipleRegression.QR(rows, _y, intercept: false));
        }
    }

    private string[] Names => [.. Fit.Design.Names];

    private double WorstCoefficient(double[] values) =>
        values.Zip(Names, (value, name) => Close.Digits(value, _certified[name])).Min();

    private double WorstDeviation(double[] values) =>
        values.Zip(Names, (value, name) => Close.Digits(value, _certified[$"SD of {name}"])).Min();

    private Design Design()
    {
        var columns = _degree == 0
            ? _x.Select((values, k) => new DesignColumn($"B{k + 1}", values))
            : Enumerable.Range(1, _degree).Select(k => DesignColumn.Power($"B{k}", _x[0], k));
        DesignColumn[] constant = _hasConstant
            ? [new DesignColumn("B0", DesignColumn.Constant(_y.Length).Values)]
            : [];
        return new Design(constant.Concat(columns));
    }

    private IEnumerable<double[]> PlainColumns()
    {
        var columns = _degree == 0
            ? _x
            : Enumerable.Range(1, _degree).Select(k => _x[0].Select(x => Math.Pow(x, k)).ToArray());
        return _hasConstant ? columns.Prepend([.. _y.Select(_ => 1.0)]) : columns;
    }

    private ExactLeastSquares Exact()
    {
        Fraction[][] given = [.. _x.Select(column => column.Select(x => (Fraction)x).ToArray())];
        Fraction[] ones = [.. _y.Select(_ => (Fraction)1)];
        List<Fraction[]> columns = [.. given];
        for (var k = 2; k <= _degree; k++)
        {
            columns.Add([.. columns[^1].Zip(given[0], (power, x) => power * x)]);
        }

        return new ExactLeastSquares(
            _hasConstant ? [ones, .. columns] : [.. columns], [.. _y.Select(y => (Fraction)y)]);
    }
}
