using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Two formulas on the same days, and two ways of kneading never on the same day: r/compare.csv, by r/compare.R.</summary>
public class TwoWaysTests
{
    private const double Tolerance = 1e-9;

    private static readonly IReadOnlyList<Bake> Bakes = Journal.Read(Repository.ReferenceData("r/compare.csv")).Bakes;
    private static readonly WaysWish Formulas = new("formula", "lane loaf", "Seed Loaf");
    private static readonly WaysWish Kneading = new("kneading", "by hand", "machine");

    [Theory]
    [InlineData("formula")]
    [InlineData("kneading")]
    public void Differences_of_times_are_those_of_R(string column)
    {
        var (found, name) = (Of(column, Measures.RiseTime), $"rise by {column}");
        double Expected(string quantity) => CompareExpected.Of(name, quantity);

        Assert.Equal(Expected("p"), found.Finding.PValue, Tolerance);
        Assert.Equal(Expected("low 95"), Math.Log(1 + (found.Finding.EffectPct!.Low!.Value / 100)), Tolerance);
        Assert.Equal(Expected("high 95"), Math.Log(1 + (found.Finding.EffectPct.High!.Value / 100)), Tolerance);
        Assert.Equal(Expected("low 90"), Math.Log(1 + (found.PercentInterval90.Low!.Value / 100)), Tolerance);
        Assert.Equal(Expected("high 90"), Math.Log(1 + (found.PercentInterval90.High!.Value / 100)), Tolerance);
        Assert.Equal(Expected("difference"), Math.Log(found.SecondMean.Value / found.FirstMean.Value), Tolerance);
        Assert.Equal(found.SecondMean.Value - found.FirstMean.Value, found.Difference.Value, 1e-6);
    }

    [Theory]
    [InlineData("formula")]
    [InlineData("kneading")]
    public void Differences_of_volumes_are_those_of_R(string column)
    {
        var (found, name) = (Of(column, Measures.SpecificVolume), $"volume by {column}");

        Assert.Equal(CompareExpected.Of(name, "difference"), found.Difference.Value, Tolerance);
        Assert.Equal(CompareExpected.Of(name, "low 95"), found.Difference.Low!.Value, Tolerance);
        Assert.Equal(CompareExpected.Of(name, "high 95"), found.Difference.High!.Value, Tolerance);
        Assert.Equal(CompareExpected.Of(name, "low 90"), found.PercentInterval90.Low!.Value * found.FirstMean.Value / 100, Tolerance);
        Assert.Equal(CompareExpected.Of(name, "p"), found.Finding.PValue, Tolerance);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(15)]
    [InlineData(20)]
    public void Alike_is_said_just_where_both_one_sided_tests_of_R_say_so(int margin)
    {
        var found = TwoWays.Compare(Bakes, Formulas with { MarginPct = margin }).Value.Compared.Single(one => one.Result == Measures.RiseTime);
        var isInside = CompareExpected.Of($"rise by formula within {margin}", "larger p of two") < 0.05;

        // The formulas differ for certain (p of R's t test is 1.6e-6), so inside the margin they differ by less than it.
        Assert.Equal(isInside ? Likeness.DifferentWithinMargin : Likeness.Different, found.Likeness);
    }

    [Fact]
    public void Formulas_are_compared_within_days_and_keep_what_they_are_made_of()
    {
        var found = TwoWays.Compare(Bakes, Formulas).Value;

        Assert.Equal(("lane loaf", "seed loaf", 12, 12), (found.First, found.Second, found.FirstCount, found.SecondCount));
        Assert.All(found.Compared, one => Assert.Equal(["baked_on"], one.Blocks));
        Assert.Equal([RiseTime.DoughTemperatureTerm], Of("formula", Measures.RiseTime).HeldStill);
        Assert.Empty(found.CannotTellApart);
    }

    [Fact]
    public void Ways_that_share_no_day_are_said_to()
    {
        var found = TwoWays.Compare(Bakes, Kneading).Value;

        Assert.Equal(["They were never baked on the same day, so what else differed from day to day is in the difference."], found.CannotTellApart);
        Assert.All(found.Compared, one => Assert.Empty(one.Blocks));
        Assert.Equal(Likeness.Alike, Of("kneading", Measures.SpecificVolume).Likeness);
        Assert.Equal(Likeness.Unknown, TwoWays.Compare(Bakes, Kneading with { MarginPct = 5 }).Value.Compared[0].Likeness);
    }

    [Fact]
    public void Turned_round_the_differences_change_their_sign_alone()
    {
        var there = Of("formula", Measures.SpecificVolume);
        var back = TwoWays.Compare(Bakes, new WaysWish("formula", "seed loaf", "lane loaf")).Value.Compared.Single(one => one.Result == Measures.SpecificVolume);

        Assert.Equal(-there.Difference.Value, back.Difference.Value, Tolerance);
        Assert.Equal(-there.Difference.Low!.Value, back.Difference.High!.Value, Tolerance);
        Assert.Equal(there.FirstMean.Value, back.SecondMean.Value, Tolerance);
    }

    [Fact]
    public void Doughs_of_one_warmer_than_all_of_the_other_are_said_to_be()
    {
        IReadOnlyList<Bake> bakes =
        [
            .. Enumerable.Range(0, 16).Select(i => OwnColumnBakes.Of(
                i, 100 + (i * 7 % 5) - (i % 2 * 12), i % 2 == 0 ? 22 + (0.1 * i) : 26 + (0.1 * i), own: ("way", i % 2 == 0 ? "cold" : "warm"))),
        ];

        Assert.Contains(
            "Every dough temperature of one lies above every one of the other, so its part can't be told from theirs.",
            TwoWays.Compare(bakes, new WaysWish("way", "cold", "warm")).Value.CannotTellApart);
    }

    [Fact]
    public void A_way_that_no_bake_has_is_a_problem_that_names_the_ways_there_are()
    {
        Assert.False(TwoWays.Compare(Bakes, new WaysWish("formula", "lane loaf", "rye")).TryGet(out _, out var problem));
        Assert.Equal("No bake has rye in column formula.", problem.Message);
        Assert.Equal("Name two of these: lane loaf, seed loaf.", problem.Remedy);

        Assert.False(TwoWays.Compare(Bakes, new WaysWish("shaping", "round", "long")).TryGet(out _, out problem));
        Assert.Equal("No bake has anything in a column shaping.", problem.Message);
    }

    [Fact]
    public void One_way_against_itself_is_a_programming_error() =>
        Assert.Throws<ArgumentException>(() => TwoWays.Compare(Bakes, new WaysWish("formula", "lane loaf", " Lane Loaf ")));

    private static ResultCompared Of(string column, Measure result) =>
        TwoWays.Compare(Bakes, column == "formula" ? Formulas : Kneading).Value.Compared.Single(one => one.Result == result);
}
