namespace BakeInsights.Inference.Tests;

/// <summary>A one-way analysis of variance of the NIST Statistical Reference Datasets.</summary>
internal sealed class NistVarianceSet
{
    public static readonly IReadOnlyList<string> All =
        ["SiRstv", "SmLs01", "SmLs02", "SmLs04", "SmLs05", "SmLs07", "SmLs08"];

    private readonly Dictionary<string, double> _certified;
    private readonly string[] _groups;
    private readonly double[] _y;

    public NistVarianceSet(string name)
    {
        var values = ReferenceTable.Read("nist/certified-variance.csv");
        _certified = values.Texts("set").Zip(values.Texts("quantity"), values.Numbers("value"))
            .Where(row => row.First == name)
            .ToDictionary(row => row.Second, row => row.Third);
        var data = ReferenceTable.Read($"nist/{name}.csv");
        (_groups, _y) = (data.Texts("group"), data.Numbers("y"));
        var constant = new Design(DesignColumn.Constant(_y.Length));
        Fit = LeastSquares.Fit(
            new Design([.. constant.Columns, .. GroupColumns.From("group", _groups, GroupCoding.AgainstFirst)]),
            _y).Value;
        Test = LeastSquares.Compare(LeastSquares.Fit(constant, _y).Value, Fit);
    }

    public LeastSquaresFit Fit { get; }

    public NestedComparison Test { get; }

    public int Groups => _groups.Distinct().Count();

    /// <summary>The digits of F, of both sums of squares, of R-squared and of the residual spread.</summary>
    public double Digits => new[]
    {
        Close.Digits(Test.FValue!.Value, _certified["F"]),
        Close.Digits(Test.ExtraSumOfSquares, _certified["between sum of squares"]),
        Close.Digits(Fit.ResidualSumOfSquares, _certified["within sum of squares"]),
        Close.Digits(Fit.RSquared, _certified["R-squared"]),
        Close.Digits(Fit.ResidualStandardDeviation, _certified["residual SD"]),
    }.Min();

    /// <summary>The digits that the exact results of the data as rounded to doubles share with the certified.</summary>
    public double InputLimit
    {
        get
        {
            var (f, between, within) = Exact();
            return new[]
            {
                Close.Digits(f, _certified["F"]),
                Close.Digits(between, _certified["between sum of squares"]),
                Close.Digits(within, _certified["within sum of squares"]),
            }.Min();
        }
    }

    /// <summary>The digits that F shares with the exact F of the very same doubles.</summary>
    public double DigitsAgainstExact => Close.Digits(Test.FValue!.Value, Exact().F);

    private (double F, double Between, double Within) Exact()
    {
        static (Fraction Mean, Fraction Within) Moments(IEnumerable<Fraction> values)
        {
            Fraction[] all = [.. values];
            var mean = all.Aggregate((Fraction)0, (sum, value) => sum + value) / all.Length;
            return (mean, all.Aggregate((Fraction)0, (sum, value) => sum + ((value - mean) * (value - mean))));
        }

        var within = _y.Zip(_groups).GroupBy(pair => pair.Second, pair => (Fraction)pair.First)
            .Aggregate((Fraction)0, (sum, group) => sum + Moments(group).Within);
        var between = Moments(_y.Select(value => (Fraction)value)).Within - within;
        var f = between / (Groups - 1) / (within / (_y.Length - Groups));
        return (f.ToDouble(), between.ToDouble(), within.ToDouble());
    }
}
