using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Hard data for the likelihood, nonlinear and prior methods: a fit of finite numbers, or a problem.</summary>
public class HardCaseTests
{
    private static readonly double[] X = [1, 2, 3, 4, 5, 6, 7, 8, 9];
    private static readonly double[] Y = [2, 3, 3, 4, 3, 5, 5, 4, 6];

    public static TheoryData<string, string> Cases
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var method in new[] { "censored", "ordinal", "rated", "nonlinear", "prior" })
            {
                foreach (var name in new[]
                {
                    "plain", "few rows", "constant column", "collinear", "one group", "all tied", "two values",
                    "missing predictor", "missing response", "huge", "tiny", "huge predictor", "tiny predictor", "outlier",
                })
                {
                    data.Add(method, name);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Hard_data_give_finite_numbers_or_a_problem(string method, string name)
    {
        var (x, y) = (X, Y);
        double[] second = [3, 1, 2, 2, 1, 3, 1, 2, 3];
        switch (name)
        {
            case "few rows": (x, y, second) = (X[..3], Y[..3], second[..3]); break;
            case "constant column": second = [.. X.Select(_ => 2.0)]; break;
            case "collinear": second = [.. X.Select(v => 3 * v)]; break;
            case "one group": (x, second) = ([.. X.Select(_ => 1.0)], [.. X.Select(_ => 1.0)]); break;
            case "all tied": y = [.. Y.Select(_ => 4.0)]; break;
            case "two values": y = [.. Y.Select((_, i) => i % 2 == 0 ? 1.0 : 2)]; break;
            case "missing predictor": x = [double.NaN, .. X[1..]]; break;
            case "missing response": y = [double.NaN, .. Y[1..]]; break;
            case "huge": y = [.. Y.Select(v => v * 1e60)]; break;
            case "tiny": y = [.. Y.Select(v => v * 1e-60)]; break;
            case "huge predictor": x = [.. X.Select(v => v * 1e60)]; break;
            case "tiny predictor": x = [.. X.Select(v => v * 1e-60)]; break;
            case "outlier": y = [.. Y[..8], 1e9]; break;
        }

        var attempt = Fit(method, x, second, y);

        if (attempt.TryGet(out var fit, out var problem))
        {
            Assert.All(fit.Terms, term =>
            {
                Assert.True(double.IsFinite(term.Estimate), term.Name);
                Assert.True(double.IsFinite(term.StandardError), term.Name);
            });
            Assert.All(fit.Rows, row => Assert.True(double.IsFinite(row.Fitted)));
            Assert.True(double.IsFinite(fit.Summary.LogLikelihood ?? 0));
            Assert.Equal(y.Length, fit.Summary.RowCount);
        }
        else
        {
            Assert.NotEmpty(problem.Columns);
            Assert.NotEmpty(problem.Message);
            Assert.NotEmpty(problem.Remedy);
            Assert.NotEqual("plain", name);
        }
    }

    private static Attempt<IFit> Fit(string method, double[] x, double[] second, double[] y)
    {
        var design = new Design(new DesignColumn("x", x), new DesignColumn("second", second));
        var withConstant = new Design([DesignColumn.Constant(x.Length), .. design.Columns]);
        var top = y.Where(double.IsFinite).Max();
        static IFit Widen<T>(T fit)
            where T : IFit => fit;
        return method switch
        {
            "censored" => CensoredLogNormal.Fit(withConstant, [.. y.Select((v, i) => i % 3 == 1
                ? CensoredValue.Above(v) : CensoredValue.Between(v * 0.88, v * 1.1))]).Select(Widen),
            "ordinal" => CumulativeLogit.Fit(design, y).Select(Widen),
            "rated" => CumulativeLogit.Fit(design, y, [.. y.Select((_, i) => $"r{i % 3}")]).Select(Widen),
            "nonlinear" => NonlinearLeastSquares.Fit(
                new NonlinearModel(["top", "rate", "shift"], (b, row) =>
                    (b[0] * (1 - Math.Exp(-b[1] * row[0]))) + (b[2] * row[1])),
                design, y, [top, 1 / x.Where(double.IsFinite).Average(), top / 10]).Select(Widen),
            _ => PriorRegression.Fit(
                withConstant, y, [new NormalPrior("x", 0.5 * top / x.Where(double.IsFinite).Max(), 1e-3 * top)])
                .Select(Widen),
        };
    }
}
