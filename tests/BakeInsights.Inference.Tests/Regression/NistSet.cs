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

    private readonly string _name;
    private readonly Dictionary<string, double> _certified;

    public NistSet(string name)
    {
        _name = name;
        var values = ReferenceTable.Read("nist/certified.csv");
        _certified = values.Texts("set").Zip(values.Texts("quantity"), values.Numbers("value"))
            .Where(row => row.First == name)
            .ToDictionary(row => row.Second, row => row.Third);
        var data = ReferenceTable.Read($"nist/{name}.csv");
        Fit = LeastSquares.Fit(Design(data), data.Numbers("y")).Value;
    }

    public LeastSquaresFit Fit { get; }

    public double CoefficientDigits => Fit.Terms.Min(term => Close.Digits(term.Estimate, _certified[term.Name]));

    public double DeviationDigits =>
        Fit.Terms.Min(term => Close.Digits(term.StandardError, _certified[$"SD of {term.Name}"]));

    public double ResidualDigits => Close.Digits(Fit.ResidualStandardDeviation, _certified["residual SD"]);

    public double RSquaredDigits => Close.Digits(Fit.RSquared, _certified["R-squared"]);

    private Design Design(ReferenceTable data)
    {
        var degree = All.Single(set => set.Name == _name).Degree;
        var columns = degree == 0
            ? data.Header.Skip(1).Select((name, k) => new DesignColumn($"B{k + 1}", data.Numbers(name))).ToList()
            : Enumerable.Range(1, degree).Select(k => DesignColumn.Power($"B{k}", data.Numbers("x"), k)).ToList();
        if (_certified.ContainsKey("B0"))
        {
            columns.Insert(0, new DesignColumn("B0", DesignColumn.Constant(data.RowCount).Values));
        }

        return new Design(columns);
    }
}
