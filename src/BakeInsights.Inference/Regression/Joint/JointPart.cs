namespace BakeInsights.Inference;

/// <summary>One response while coefficients are drawn.</summary>
internal sealed class JointPart
{
    private readonly double[][] _rows;
    private readonly double[] _values;
    private readonly double[,] _products;
    private readonly PriorGroup[] _groups;

    public JointPart(JointResponse response, LeastSquaresFit start)
    {
        var size = response.Design.Columns.Count;
        _rows = [.. Enumerable.Range(0, response.Design.RowCount).Select(row => response.Design.Row(row).ToArray())];
        _values = [.. response.Values];
        Units = [.. response.Units];
        Varying = [.. response.Varying.Select(response.Design.IndexOf)];
        _groups = [.. response.Priors.Select(priors => new PriorGroup(priors, response.Design))];

        _products = new double[size, size];
        foreach (var row in _rows)
        {
            for (var i = 0; i < size; i++)
            {
                for (var j = 0; j <= i; j++)
                {
                    _products[i, j] += row[i] * row[j];
                }
            }
        }

        Coefficients = [.. start.Terms.Select(term => term.Estimate)];
        StartVariance = start.ResidualStandardDeviation * start.ResidualStandardDeviation;
    }

    /// <summary>The unit of each row.</summary>
    public int[] Units { get; }

    /// <summary>The places of the columns that happen.</summary>
    public int[] Varying { get; }

    /// <summary>The residual variance to start from.</summary>
    public double StartVariance { get; }

    /// <summary>The coefficients as last drawn.</summary>
    public double[] Coefficients { get; private set; }

    /// <summary>The residual of a row.</summary>
    public double Residual(int row)
    {
        var fitted = 0.0;
        for (var j = 0; j < Coefficients.Length; j++)
        {
            fitted += _rows[row][j] * Coefficients[j];
        }

        return _values[row] - fitted;
    }

    /// <summary>What the columns that happen add to the response, as in a row of the data.</summary>
    public double AddedBy(int row) => Varying.Sum(place => _rows[row][place] * Coefficients[place]);

    /// <summary>Draws the coefficients, given what each row's residual is expected to be and their variance.</summary>
    public void Draw(double[] expected, double variance, Random random)
    {
        var size = Coefficients.Length;
        var precision = new double[size, size];
        var pull = new double[size];
        for (var i = 0; i < size; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                precision[i, j] = _products[i, j] / variance;
            }
        }

        foreach (var group in _groups)
        {
            group.AddTo(precision, pull);
        }

        for (var row = 0; row < _rows.Length; row++)
        {
            var target = (_values[row] - expected[row]) / variance;
            for (var j = 0; j < size; j++)
            {
                pull[j] += _rows[row][j] * target;
            }
        }

        // The least-squares fits have shown that no column depends on others.
        var information = Information.Of(precision)
            ?? throw new InvalidOperationException("The columns depend on each other.");
        var mean = information.Solve(pull);
        var deviate = information.Deviate([.. Enumerable.Range(0, size).Select(_ => MathNet.Numerics.Distributions.Normal.Sample(random, 0, 1))]);
        Coefficients = [.. mean.Zip(deviate, (m, d) => m + d)];
        foreach (var group in _groups)
        {
            group.Draw(Coefficients, random);
        }
    }
}
