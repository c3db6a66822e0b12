using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class MeasuresTests
{
    private const string AllOfFlour =
        "hydration_pct,salt_pct,sugar_pct,fat_pct,yeast_instant_pct,prefermented_flour_pct,dough_yield";

    private static readonly QuantityColumn[] Weights =
    [
        BakeColumns.Flour, BakeColumns.Water, BakeColumns.Salt, BakeColumns.Yeast, BakeColumns.Sugar, BakeColumns.Fat,
        BakeColumns.Milk, BakeColumns.Preferment,
    ];

    private static readonly Measure[] Percentages =
    [
        Measures.Hydration, Measures.Salt, Measures.Yeast, Measures.Sugar, Measures.Fat, Measures.PrefermentedFlour,
        Measures.DoughYield,
    ];

    [Fact]
    public void Percentages_of_a_bake_do_not_change_when_its_dough_is_scaled() =>
        Gen.Select(Gen.Double[10, 1000].Array[Weights.Length], Gen.Double[1, 100], Gen.Double[40, 200])
            .Sample((weights, scale, hydration) =>
            {
                var one = Dough(weights, hydration);
                var scaled = Dough([.. weights.Select(weight => scale * weight)], hydration);
                return Percentages.All(measure =>
                    Math.Abs(measure.Of(one)!.Value - measure.Of(scaled)!.Value) <= 1e-9 * measure.Of(one)!.Value);
            });

    // What is missing limits only what needs it, and is never taken as zero.
    [Theory]
    [InlineData("flour_g", AllOfFlour)]
    [InlineData("water_g", AllOfFlour)]
    [InlineData("salt_g", "salt_pct")]
    [InlineData("yeast_g", "yeast_instant_pct")]
    [InlineData("yeast_kind", "yeast_instant_pct")]
    [InlineData("sugar_g", "sugar_pct")]
    [InlineData("fat_g", "fat_pct")]
    [InlineData("milk_g", "")]
    [InlineData("preferment_hydration_pct", AllOfFlour)]
    [InlineData("loaf_volume_ml", "specific_volume_ml_per_g")]
    [InlineData("loaf_g", "specific_volume_ml_per_g,bake_loss_pct")]
    [InlineData("loaf_count", "bake_loss_pct")]
    [InlineData("dough_g", "bake_loss_pct")]
    [InlineData("dough_temp_c", "dough_temp_c")]
    [InlineData("room_temp_c", "room_temp_c")]
    [InlineData("water_temp_c", "water_temp_c")]
    [InlineData("rise_min", "rise_min")]
    [InlineData("proof_min", "proof_min")]
    [InlineData("crumb_score", "crumb_score")]
    public void Cell_left_empty_takes_away_only_the_measures_that_need_it(string empty, string expected)
    {
        string[] names =
        [
            "baked_on", "flour_g", "water_g", "salt_g", "yeast_g", "yeast_kind", "sugar_g", "fat_g", "milk_g", "preferment_g",
            "preferment_hydration_pct", "room_temp_c", "water_temp_c", "dough_temp_c", "rise_min", "proof_min", "dough_g",
            "loaf_count", "loaf_g", "loaf_volume_ml", "crumb_score",
        ];
        string[] cells =
        [
            "2026-10-01", "500", "300", "10", "3", "instant", "15", "20", "50", "200", "100", "21", "25", "24", "90", "50",
            "1000", "2", "440", "1900", "7",
        ];
        cells[Array.IndexOf(names, empty)] = "";

        var bake = Csv.Bake(string.Join(',', names), string.Join(',', cells));

        Assert.Equal(
            expected.Split(',', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal),
            Measures.All.Where(measure => measure.Of(bake) is null).Select(measure => measure.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Dough_without_a_preferment_has_no_prefermented_flour() =>
        Assert.Equal(0, Measures.PrefermentedFlour.Of(Csv.Bake("baked_on,flour_g,water_g", "2026-10-01,500,325")));

    [Fact]
    public void Names_are_unique_and_every_measure_says_where_it_comes_from()
    {
        Assert.Equal(Measures.All.Count, Measures.All.Select(measure => measure.Name).Distinct().Count());
        Assert.All(Measures.All, measure =>
        {
            Assert.NotEmpty(measure.Title);
            Assert.NotEmpty(measure.Formula);
            Assert.NotEmpty(measure.Source);
        });
    }

    [Fact]
    public void Every_measure_of_the_class_is_in_the_catalogue()
    {
        var declared = typeof(Measures).GetProperties()
            .Where(property => property.PropertyType == typeof(Measure)).Select(property => (Measure)property.GetValue(null)!);

        Assert.Equal(declared.Select(Name).Order(StringComparer.Ordinal), Measures.All.Select(Name).Order(StringComparer.Ordinal));

        static string Name(Measure measure) => measure.Name;
    }

    private static Bake Dough(double[] weights, double hydration)
    {
        var draft = new BakeDraft("a", new DateOnly(2026, 10, 1))
            .Set(BakeColumns.YeastKind, "fresh").Set(BakeColumns.PrefermentHydration, hydration);
        foreach (var (column, weight) in Weights.Zip(weights))
        {
            draft.Set(column, weight);
        }

        return draft.Finish(new SourceLine("made.csv", 1));
    }
}
