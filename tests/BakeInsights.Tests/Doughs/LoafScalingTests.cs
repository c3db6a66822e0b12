using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class LoafScalingTests
{
    [Fact]
    public void A_piece_for_a_loaf_loses_just_its_bake_loss() => Gen.Select(Gen.Double[50, 2_000], Gen.Double[0, 40]).Sample((loaf, loss) =>
        Math.Abs(Loaves.BakeLossPct(Loaves.PieceFor(loaf, loss), loaf) - loss) < 1e-9);

    // By hand: 8 x 500 g / 0.98.
    [Fact]
    public void Dough_for_pieces_counts_what_stays_on_the_bench() => Assert.Equal(4_081.63, Loaves.DoughFor(8, 500, 2), 0.005);

    // Bocevska et al.: 600 g of bread need 683 g of dough, loss 12.2 %.
    [Fact]
    public void The_regression_gives_the_loss_that_its_source_prints() =>
        Assert.Equal(12.2, Loaves.BakeLossPct(Loaves.PieceForByRegression(600), 600), 0.05);

    [Theory]
    [InlineData(-1)]
    [InlineData(100)]
    [InlineData(double.NaN)]
    public void A_loss_of_all_the_dough_is_refused(double lossPct) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Loaves.PieceFor(500, lossPct));
}
