using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class RankCorrelationTests
{
    [Fact]
    public void Scores_over_hydration_give_the_figures_of_R()
    {
        // Constructed: scores of 18 loaves by hydration. R 4.2: cor(h, s, method = "spearman") is 0.5952 and
        // cor(h, s, method = "kendall"), which is tau-b, 0.4879.
        var hydration = new DesignColumn("hydration", [60, 60, 62, 62, 64, 64, 66, 66, 68, 68, 70, 70, 72, 72, 74, 74, 76, 78]);
        var score = new DesignColumn("score", [2, 3, 3, 2, 3, 4, 3, 4, 4, 5, 4, 5, 5, 4, 5, 4, 3, 4]);
        var both = RankCorrelation.Of(hydration, score).Value;
        Assert.Equal(0.5952, both.Spearman, 5e-5);
        Assert.Equal(0.4879, both.KendallB, 5e-5);
    }

    [Fact]
    public void Order_alone_counts_and_reversing_a_column_turns_the_sign() =>
        Gen.Select(Gen.Int[0, 9].Array[3, 20], Gen.Int[0, 9].Array[20]).Sample((a, b) =>
        {
            double[] one = [.. a.Select(value => (double)value)];
            double[] other = [.. b.Take(a.Length).Select(value => (double)value)];
            if (!RankCorrelation.Of(new("a", one), new("b", other)).TryGet(out var plain, out var problem))
            {
                Assert.Equal(FitProblemKind.NoSpread, problem.Kind);
                return;
            }

            var bent = RankCorrelation.Of(new("a", [.. one.Select(Math.Exp)]), new("b", [.. other.Select(value => -value)])).Value;
            Assert.Equal(plain.Spearman, -bent.Spearman, 1e-12);
            Assert.Equal(plain.KendallB, -bent.KendallB, 1e-12);
            Assert.InRange(plain.Spearman, -1 - 1e-12, 1 + 1e-12);
            Assert.InRange(plain.KendallB, -1 - 1e-12, 1 + 1e-12);
        });

    [Fact]
    public void What_has_no_order_is_a_problem()
    {
        var flat = RankCorrelation.Of(new("a", [1, 1, 1]), new("b", [1, 2, 3]));
        Assert.False(flat.TryGet(out _, out var problem));
        Assert.Equal("Column a is the same in every row, so it has no order. Add rows in which it differs.", $"{problem.Message} {problem.Remedy}");
        var missing = RankCorrelation.Of(new("a", [1, 2, 3]), new("b", [1, double.NaN, 3]));
        Assert.False(missing.TryGet(out _, out problem));
        Assert.Equal("Column b has a value that is no number. Leave that row out, or fill in its value.", $"{problem.Message} {problem.Remedy}");
        var error = Assert.Throws<ArgumentException>(() => RankCorrelation.Of(new("a", [1, 2]), new("b", [1])));
        Assert.StartsWith("Column a has 2 rows and column b has 1.", error.Message, StringComparison.Ordinal);
    }
}
