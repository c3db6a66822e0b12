using System.Globalization;
using BakeInsights.TestKit;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>What an answer must not depend on.</summary>
public class AnswerPropertyTests
{
    // The avoirdupois ounce and the cubic inch are exact by definition (International yard and pound agreement, 1959).
    private const double GramsInOunce = 28.349523125;
    private const double MillilitresInCubicInch = 16.387064;

    private const string MetricColumns = "flour_g,water_g,salt_g,yeast_g,dough_temp_c,rise_min,loaf_g,loaf_volume_ml";

    private static readonly Gen<IReadOnlyList<Bake>> Months =
        Gen.Int[1, 1_000_000].Select(seed => ExactKitchen.Month(seed, new KitchenTruth(), bakes: 20));

    [Fact]
    public void Answers_do_not_depend_on_the_order_of_the_rows() =>
        Gen.Select(Months, Gen.Int[1, 1_000_000]).Sample(
            (bakes, seed) =>
            {
                var shuffled = bakes.ToArray();
                new Random(seed).Shuffle(shuffled);
                Nearly.Same(RiseTime.Ask(bakes).Value, RiseTime.Ask(shuffled).Value);
                Nearly.Same(LoafVolume.Ask(bakes).Value, LoafVolume.Ask(shuffled).Value);
            },
            iter: 50);

    [Fact]
    public void Answers_do_not_depend_on_the_units_the_journal_is_written_in() =>
        Months.Sample(
            bakes =>
            {
                var metric = Read(MetricColumns, bakes, 1, c => c, 1, 1);
                var us = Read(
                    "flour_oz,water_oz,salt_oz,yeast_oz,dough_temp_f,rise_h,loaf_oz,loaf_volume_cuin",
                    bakes, GramsInOunce, c => (1.8 * c) + 32, 60, MillilitresInCubicInch);
                Nearly.Same(RiseTime.Ask(metric).Value, RiseTime.Ask(us).Value);
                Nearly.Same(LoafVolume.Ask(metric).Value, LoafVolume.Ask(us).Value);
            },
            iter: 20);

    [Fact]
    public void Whole_degrees_apart_are_levels_in_either_unit()
    {
        // 24, 25 and 26 °C are 75.2, 77 and 78.8 °F: three levels, enough for a curve.
        var bakes = Dough.Bakes(24, (dough, i) => dough with { Celsius = 24 + (i % 3) });
        var columns = MetricColumns.Replace("dough_temp_c", "dough_temp_f", StringComparison.Ordinal);
        var us = Read(columns, bakes, 1, c => Math.Round((1.8 * c) + 32, 1), 1, 1);
        Nearly.Same(LoafVolume.Ask(bakes).Value, LoafVolume.Ask(us).Value);
        Assert.NotNull(LoafVolume.Ask(us).Value.Coefficient(LoafVolume.DoughTemperatureSquaredTerm));
    }

    [Fact]
    public void Doubling_all_rise_times_adds_ln_2_to_the_intercept_and_changes_nothing_else() =>
        Months.Sample(
            bakes =>
            {
                var once = RiseTime.Ask(bakes).Value;
                var twice = RiseTime.Ask(Read(MetricColumns, bakes, 1, c => c, 0.5, 1)).Value;
                foreach (var (one, two) in once.Terms.Zip(twice.Terms))
                {
                    var added = one.Name == "intercept" ? Math.Log(2) : 0;
                    var size = 1 + Math.Abs(one.Coefficient.Estimate);
                    Assert.Equal(one.Coefficient.Estimate + added, two.Coefficient.Estimate, Nearly.Rounding * size);
                    Assert.Equal(one.Coefficient.StandardError, two.Coefficient.StandardError, Nearly.Rounding);
                }

                Nearly.Equal(once.Q10!.Value, twice.Q10!.Value);
            },
            iter: 20);

    private static IReadOnlyList<Bake> Read(
        string columns, IReadOnlyList<Bake> bakes, double grams, Func<double, double> degrees, double minutes, double millilitres)
    {
        var lines = bakes.Select(bake => string.Join(',', new[]
        {
            bake[BakeColumns.Flour] / grams,
            bake[BakeColumns.Water] / grams,
            bake[BakeColumns.Salt] / grams,
            bake[BakeColumns.Yeast] / grams,
            degrees(bake[BakeColumns.DoughTemp]!.Value),
            bake[BakeColumns.Rise] / minutes,
            bake[BakeColumns.Loaf] / grams,
            bake[BakeColumns.LoafVolume] / millilitres,
        }.Select(value => value!.Value.ToString("R", CultureInfo.InvariantCulture)).Prepend($"{bake.Id},2026-10-01,instant")));
        using var folder = new TemporaryFolder();
        var path = folder.Write("bakes.csv", string.Join('\n', lines.Prepend("bake_id,baked_on,yeast_kind," + columns)) + "\n");
        var journal = Journal.Read(path);
        Assert.DoesNotContain(journal.Notices, notice => notice.Gravity >= Gravity.Unread);
        return journal.Bakes;
    }
}
