using BakeInsights.Inference;
using BenchmarkDotNet.Attributes;
using MathNet.Numerics.Distributions;

namespace BakeInsights.Benchmarks;

/// <summary>Least squares on many rows, and robust fits on few. The columns are those of a journal of bakes.</summary>
[MemoryDiagnoser]
public class LeastSquaresBenchmarks
{
    private const int Many = 1_000_000, Few = 60;

    private Design _linear = null!;
    private Design _quadratic = null!;
    private Design _few = null!;
    private double[] _response = null!;
    private double[][] _rows = null!;

    [GlobalSetup]
    public void Draw()
    {
        var random = new Random(1);
        double[] Column(double mean, double deviation) =>
            [.. Enumerable.Range(0, Many).Select(_ => Normal.Sample(random, mean, deviation))];
        var (temperature, hydration) = (Column(24, 1.8), Column(65, 3));
        DesignColumn[] shared =
        [
            DesignColumn.Constant(Many), new("temperature", temperature), new("hydration", hydration),
            new("log yeast", Column(0, 0.3)), new("salt", Column(2, 0.2)),
        ];
        _linear = new Design(
            [.. shared, new("sugar", Column(2, 1)), new("fat", Column(1, 0.5)), new("log mixing", Column(2, 0.2))]);
        _quadratic = new Design(
        [
            .. shared, DesignColumn.Power("temperature squared", temperature, 2),
            DesignColumn.Power("hydration squared", hydration, 2), new("log mixing", Column(2, 0.2)),
        ]);
        _response = Column(5, 0.1);
        _rows = [.. Enumerable.Range(0, Many).Select(i => _linear.Row(i).ToArray())];
        _few = new Design(shared.Take(4).Select(column => new DesignColumn(column.Name, [.. column.Values.Take(Few)])));
    }

    [Benchmark]
    public object Million_rows_of_eight_columns() => LeastSquares.Fit(_linear, _response);

    [Benchmark]
    public object Million_rows_of_eight_columns_that_nearly_depend() => LeastSquares.Fit(_quadratic, _response);

    [Benchmark]
    public object Million_rows_one_by_one()
    {
        var sums = new RunningSums(_linear.Names);
        for (var i = 0; i < Many; i++)
        {
            sums.Add(_rows[i], _response[i]);
        }

        return sums.Fit();
    }

    [Benchmark]
    public object Sixty_rows_of_four_columns() => LeastSquares.Fit(_few, _response[..Few]);

    [Benchmark]
    public object Sixty_rows_of_four_columns_by_MM() => RobustRegression.MmEstimate(_few, _response[..Few], 1);
}
