using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Simulated journals: rise times by dough temperature, a block, and a column of the baker's own.</summary>
public class ColumnCoverageTests
{
    private const int Journals = 400;

    // Four standard deviations of a binomial share of 5 % or 95 %: a right method passes it once in 16,000 seeds.
    private static readonly double Margin = 4 * Math.Sqrt(0.05 * 0.95 / Journals);

    [Theory]
    [InlineData(12, 2, ColumnForm.Levels)]
    [InlineData(16, 3, ColumnForm.Levels)]
    [InlineData(14, 4, ColumnForm.Line)]
    [InlineData(14, 4, ColumnForm.Curve)]
    public void Column_without_an_effect_is_called_one_in_five_percent(int bakes, int levels, ColumnForm form)
    {
        var answers = Enumerable.Range(0, Journals).Select(seed => One(seed, bakes, levels, form, 0)).ToList();

        Assert.Equal(0.05, answers.Average(answer => answer.PValue <= 0.05 ? 1 : 0), Margin);
        Assert.True(answers.Average(answer => answer.Finding.EffectPct is { Low: <= 0, High: >= 0 } ? 1.0 : 0) >= 0.95 - Margin);
    }

    [Theory]
    [InlineData(2, ColumnForm.Levels)]
    [InlineData(3, ColumnForm.Line)]
    public void Interval_of_an_effect_holds_the_truth_in_ninety_five_percent(int levels, ColumnForm form)
    {
        const double perLevel = 0.1;
        var truth = 100 * double.ExpM1((levels - 1) * perLevel);
        var held = Enumerable.Range(0, Journals).Select(seed => One(seed, 15, levels, form, perLevel).Largest.EffectPct!)
            .Average(effect => effect.Low <= truth && truth <= effect.High ? 1.0 : 0);
        Assert.Equal(0.95, held, Margin);
    }

    private static ColumnAnswer One(int seed, int bakes, int levels, ColumnForm form, double perLevel)
    {
        var random = new Random(seed);
        var rows = Enumerable.Range(0, bakes).Select(i =>
        {
            var celsius = Math.Round(Normal.Sample(random, 24, 2), 1);
            var level = i % levels;
            var minutes = 90 * Math.Exp((-0.09 * (celsius - 24)) + (perLevel * level) + (2 * i < bakes ? 0.2 : 0) + Normal.Sample(random, 0, 0.1));
            return OwnColumnBakes.Of(i, minutes, celsius, 2 * i < bakes ? "north" : "south", ("dose", $"{level}"));
        });
        return ColumnQuestion.Ask([.. rows], Measures.RiseTime, "dose", form, ["group"]).Value;
    }
}
