using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>What flour by the cup does to the percentages of a bake.</summary>
public class FlourUncertaintyTests
{
    private const int Draws = 200_000;
    private const int Seed = 35;

    private static readonly Measure[] Percentages =
        [Measures.Hydration, Measures.Salt, Measures.Yeast, Measures.Sugar, Measures.Fat, Measures.PrefermentedFlour, Measures.DoughYield];

    // Spread of a cup: HouseholdWeights and the published figures named there. sqrt(0.04² + 0.03²/4) = 0.04272,
    // sqrt(0.06² + 0.03²/4) = 0.06185, sqrt(0.08² + 0.03²/4) = 0.08139, worked by hand.
    [Theory]
    [InlineData("weighed", 0)]
    [InlineData("", 0)]
    [InlineData("spooned", 0.04272)]
    [InlineData("sifted", 0.04272)]
    [InlineData("scooped", 0.06185)]
    [InlineData("cup_unknown", 0.08139)]
    public void Flour_of_four_cups_is_as_uncertain_as_their_filling(string measure, double expected)
    {
        var grams = measure switch { "sifted" => 464, "scooped" => 548, "cup_unknown" => 500, _ => 504 };

        Assert.Equal(expected, Csv.Bake("baked_on,flour_g,flour_measure", $"2026-10-01,{grams},{measure}").FlourRelativeSd, 5e-6);
    }

    [Fact]
    public void More_cups_average_out_what_is_each_cups_own_but_not_what_they_share() => Gen.Int[1, 40].Sample(cups =>
    {
        double Of(int count) => Csv.Bake("baked_on,flour_cups,flour_measure", $"2026-10-01,{count},spooned").FlourRelativeSd;
        return Of(cups + 1) < Of(cups) && Of(cups) > 0.04 && Of(cups) <= 0.05 + 1e-12;
    }, iter: 20);

    [Fact]
    public void Bake_without_flour_has_no_uncertainty_of_it() =>
        Assert.Equal(0, Csv.Bake("baked_on,flour_measure", "2026-10-01,spooned").FlourRelativeSd);

    // The scatter itself, drawn: a bake of four cups each written down as 126 g; the hand's error is one for all four,
    // each cup has its own besides. To first order the standard deviation is that of Measure.SdOf; the second order adds
    // about 2 sd² = 0.4 %, and 200,000 draws leave 0.2 %.
    [Fact]
    public void Drawn_cups_scatter_the_percentages_as_said_and_all_together()
    {
        var random = new Random(Seed);
        var nominal = Bake(504);
        var hydrations = new double[Draws];
        var salts = new double[Draws];
        for (var i = 0; i < Draws; i++)
        {
            var hand = 0.04 * Normal(random);
            var flour = Enumerable.Range(0, 4).Sum(_ => 126 * (1 + hand + (0.03 * Normal(random))));
            var real = Bake(flour);
            hydrations[i] = Measures.Hydration.Of(real)!.Value;
            salts[i] = Measures.Salt.Of(real)!.Value;
        }

        Assert.Equal(Measures.Hydration.SdOf(nominal)!.Value, Sd(hydrations), 0.01 * Sd(hydrations));
        Assert.Equal(Measures.Salt.SdOf(nominal)!.Value, Sd(salts), 0.01 * Sd(salts));
        Assert.Equal(1, Correlation(hydrations, salts), 1e-9);
    }

    // Berkson's kind: what is written down stays, the truth scatters. 65 % uncertain by 4.27 % is 2.78 points.
    [Fact]
    public void Hydration_of_65_percent_by_four_spooned_cups_is_uncertain_by_2_8_points()
    {
        var bake = Csv.Bake("baked_on,flour_cups,flour_measure,water_g", "2026-10-01,4,spooned,327.6");

        Assert.Equal(65, Measures.Hydration.Of(bake)!.Value, 1e-9);
        Assert.Equal(2.777, Measures.Hydration.SdOf(bake)!.Value, 5e-4);
    }

    // The derivative by ln(flour), held against the difference over a small step, with a preferment in the dough too.
    [Fact]
    public void Sensitivity_is_the_slope_of_the_measure_in_the_logarithm_of_flour() =>
        Gen.Select(Gen.Double[200, 1000], Gen.Double[100, 800], Gen.Double[1, 400]).Sample((flour, water, preferment) =>
        {
            const double step = 1e-5;
            Bake Of(double factor) => Rich(flour * factor, water, preferment);
            return Percentages.All(measure =>
            {
                var slope = (measure.Of(Of(1 + step))!.Value - measure.Of(Of(1 - step))!.Value) / (2 * step);
                return Math.Abs(measure.SensitivityToFlour(Of(1))!.Value - slope) < 1e-5 * Math.Max(1, Math.Abs(slope));
            });
        });

    [Fact]
    public void What_has_nothing_to_do_with_flour_is_not_moved_by_it()
    {
        var bake = Csv.Bake("baked_on,flour_cups,flour_measure,dough_temp_c,rise_min", "2026-10-01,4,spooned,24,90");

        Assert.Equal((0, 0), (Measures.DoughTemperature.SdOf(bake), Measures.RiseTime.SensitivityToFlour(bake)));
        Assert.Null(Measures.Hydration.SdOf(bake));
        Assert.Null(Measures.BakeLoss.SensitivityToFlour(bake));
    }

    // Flour fermented ahead was weighed: 250 of 750 g is certain, so that 65 % moves by two thirds.
    [Fact]
    public void Flour_of_the_preferment_is_not_uncertain()
    {
        var bake = Rich(500, 237.5, 500);

        Assert.Equal(65, Measures.Hydration.Of(bake)!.Value, 1e-9);
        Assert.Equal(-65 * 2 / 3.0, Measures.Hydration.SensitivityToFlour(bake)!.Value, 1e-9);
    }

    private static Bake Bake(double flour) => new BakeDraft("a", new DateOnly(2026, 10, 1))
        .Set(BakeColumns.Flour, flour).Set(BakeColumns.FlourMeasure, "spooned").Set(BakeColumns.Water, 327.6)
        .Set(BakeColumns.Salt, 10).Finish(new SourceLine("bakes.csv", 2));

    private static Bake Rich(double flour, double water, double preferment) => new BakeDraft("a", new DateOnly(2026, 10, 1))
        .Set(BakeColumns.Flour, flour).Set(BakeColumns.FlourMeasure, "spooned").Set(BakeColumns.Water, water)
        .Set(BakeColumns.Preferment, preferment).Set(BakeColumns.PrefermentHydration, 100)
        .Set(BakeColumns.Salt, 10).Set(BakeColumns.Yeast, 4).Set(BakeColumns.YeastKind, "fresh")
        .Set(BakeColumns.Sugar, 20).Set(BakeColumns.Fat, 15).Set(BakeColumns.Milk, 30).Finish(new SourceLine("bakes.csv", 2));

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static double Sd(double[] values)
    {
        var mean = values.Average();
        return Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1));
    }

    private static double Correlation(double[] one, double[] other)
    {
        var (mean, otherMean) = (one.Average(), other.Average());
        var covariance = one.Zip(other, (a, b) => (a - mean) * (b - otherMean)).Sum() / (one.Length - 1);
        return covariance / (Sd(one) * Sd(other));
    }
}
