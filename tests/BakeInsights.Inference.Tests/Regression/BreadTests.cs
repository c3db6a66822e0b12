using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Published baking experiments; the sources are in tests/reference-data/README.md.</summary>
public class BreadTests
{
    [Fact]
    public void Group_means_of_rise_height_are_the_coefficients_of_every_group()
    {
        var data = ReferenceTable.Read("bread/rise-height.csv");

        var fit = LeastSquares.Fit(
            new Design(GroupColumns.From("minutes", data.Texts("minutes"), GroupCoding.EveryGroup)),
            data.Numbers("height")).Value;

        Assert.Equal(["minutes = 35", "minutes = 40", "minutes = 45"], fit.Terms.Select(term => term.Name));
        foreach (var (mean, term) in new[] { 5.4375, 8.25, 8.3125 }.Zip(fit.Terms))
        {
            Close.Relative(mean, term.Estimate, 1e-13);
        }
    }

    [Fact]
    public void Rise_time_matters_by_the_published_F()
    {
        var data = ReferenceTable.Read("bread/rise-height.csv");
        var height = data.Numbers("height");
        var constant = DesignColumn.Constant(data.RowCount);
        var groups = GroupColumns.From("minutes", data.Texts("minutes"), GroupCoding.AgainstFirst);
        var mean = LeastSquares.Fit(new Design(constant), height).Value;
        var means = LeastSquares.Fit(new Design([constant, .. groups]), height).Value;

        var test = LeastSquares.Compare(mean, means);

        // Lawson (2015), section 2.4: F 4.602, p 0.042; further digits recomputed in R.
        Close.Relative(4.60222222222222, test.FValue, 1e-12);
        Close.Relative(0.0420042135839197, test.PValue, 1e-12);
        Close.Relative(21.572916666666667, test.ExtraSumOfSquares, 1e-12);
        Assert.Equal((2, 9), (test.ExtraDegreesOfFreedom, test.ResidualDegreesOfFreedom));
        Close.Relative(21.09375, means.ResidualSumOfSquares, 1e-13);
        Close.Relative(1.53093108923949, means.ResidualStandardDeviation, 1e-13);
        Close.Relative(0.505615234375, means.RSquared, 1e-13);
        Close.Relative(5.4375, means.Terms[0].Estimate, 1e-13);
        Close.Relative(8.25 - 5.4375, means.Terms[1].Estimate, 1e-13);
    }

    [Fact]
    public void Straight_line_of_rise_height_is_the_published_one()
    {
        var data = ReferenceTable.Read("bread/rise-height.csv");

        var fit = LeastSquares.Fit(
            new Design(DesignColumn.Constant(data.RowCount), data.Column("minutes")), data.Numbers("height")).Value;

        // Lawson (2015), chapter 2, recomputed in R.
        Close.Relative(-25.0 / 6, fit.Terms[0].Estimate, 1e-12);
        Close.Relative(4.59631683766711, fit.Terms[0].StandardError, 1e-12);
        Close.Relative(0.2875, fit.Terms[1].Estimate, 1e-12);
        Close.Relative(0.114314077581605, fit.Terms[1].StandardError, 1e-12);
        Close.Relative(2.5150008300138, fit.Terms[1].TValue, 1e-12);
        Close.Relative(0.0306488146144442, fit.Terms[1].PValue, 1e-12);
        Close.Relative(1.61664518886077, fit.ResidualStandardDeviation, 1e-12);
        Close.Relative(0.387451171875, fit.RSquared, 1e-12);
    }

    [Fact]
    public void Flours_and_bromate_levels_have_the_published_sums_of_squares()
    {
        var data = ReferenceTable.Read("bread/bromate.csv");
        var volume = data.Numbers("volume_ml");
        var constant = DesignColumn.Constant(data.RowCount);
        var flours = GroupColumns.From("flour", data.Texts("flour"), GroupCoding.AgainstFirst);
        var levels = GroupColumns.From("level", data.Texts("level"), GroupCoding.AgainstFirst);
        var both = LeastSquares.Fit(new Design([constant, .. flours, .. levels]), volume).Value;

        var flourTest = LeastSquares.Compare(LeastSquares.Fit(new Design([constant, .. levels]), volume).Value, both);
        var levelTest = LeastSquares.Compare(LeastSquares.Fit(new Design([constant, .. flours]), volume).Value, both);

        // Data of Larmour (1941); analysis in R.
        Assert.Equal((16, 4, 64), (flourTest.ExtraDegreesOfFreedom, levelTest.ExtraDegreesOfFreedom,
            both.ResidualDegreesOfFreedom));
        Close.Relative(776939.411764707, flourTest.ExtraSumOfSquares, 1e-11);
        Close.Relative(116537.058823529, levelTest.ExtraSumOfSquares, 1e-11);
        Close.Relative(28.3443476954607, flourTest.FValue, 1e-11);
        Close.Relative(17.0060463644021, levelTest.FValue, 1e-11);
        Close.Relative(5.63846313134009e-23, flourTest.PValue, 1e-10);
        Close.Relative(1.51209729213932e-09, levelTest.PValue, 1e-10);
        Close.Relative(41.3904693846585, both.ResidualStandardDeviation, 1e-12);
    }

    [Fact]
    public void Flours_as_blocks_shrink_the_residual_spread_of_the_bromate_parabola()
    {
        var data = ReferenceTable.Read("bread/bromate.csv");
        var volume = data.Numbers("volume_ml");
        var level = data.Column("level");
        var square = new DesignColumn("level squared", level.Values.Select(x => x * x).ToArray());
        var flours = GroupColumns.From("flour", data.Texts("flour"), GroupCoding.EveryGroup);

        var blocked = LeastSquares.Fit(new Design([level, square, .. flours]), volume).Value;
        var plain = LeastSquares.Fit(new Design(DesignColumn.Constant(data.RowCount), level, square), volume).Value;

        // Data of Larmour (1941); the rounded figures come from an analysis in R.
        Close.Absolute(82.105, blocked.Terms[0].Estimate, 5e-4);
        Close.Absolute(11.750, blocked.Terms[0].StandardError, 5e-4);
        Close.Absolute(-20.651, blocked.Terms[1].Estimate, 5e-4);
        Close.Absolute(2.817, blocked.Terms[1].StandardError, 5e-4);
        Close.Absolute(43.456, blocked.ResidualStandardDeviation, 5e-4);
        Close.Absolute(104.856, plain.ResidualStandardDeviation, 5e-4);
        Close.Absolute(0.1012, plain.RSquared, 5e-5);

        // The R-squared of the blocked fit is about the mean, so a constant takes the place of one flour.
        var centred = LeastSquares.Fit(
            new Design([DesignColumn.Constant(data.RowCount), level, square, .. flours.Skip(1)]), volume).Value;
        Close.Absolute(0.8758, centred.RSquared, 5e-5);
        Assert.False(blocked.RSquaredIsCentred);
        Assert.True(centred.RSquaredIsCentred);

        var vertex = QuadraticVertex.Of(blocked, "level", "level squared", 0.95).Value;
        Assert.Equal(VertexKind.Maximum, vertex.Kind);
        Close.Absolute(1.988, vertex.Location.Estimate, 5e-4);
        Assert.Equal(RatioSetKind.Bounded, vertex.Location.Kind);
        Assert.True(vertex.Location.Contains(1.988));
    }

    [Fact]
    public void Mould_hours_have_the_published_two_factor_analysis()
    {
        var data = ReferenceTable.Read("bread/mould.csv");
        var hours = data.Numbers("hours");
        var constant = DesignColumn.Constant(data.RowCount);
        var environment = GroupColumns.From("environment", data.Texts("environment"), GroupCoding.AgainstFirst);
        var humidity = GroupColumns.From("humidity", data.Texts("humidity"), GroupCoding.AgainstFirst);
        var cells = GroupColumns.From(
            "cell",
            [.. data.Texts("environment").Zip(data.Texts("humidity"), (e, h) => $"{e}, {h}")],
            GroupCoding.AgainstFirst);
        LeastSquaresFit Fit(params IEnumerable<DesignColumn> columns) =>
            LeastSquares.Fit(new Design([constant, .. columns]), hours).Value;

        // Each cell has three loaves, so the sums of squares don't depend on the order of entry.
        var additive = Fit([.. environment, .. humidity]);
        var full = Fit([.. environment, .. humidity, .. Products(environment, humidity)]);

        Close.Relative(201904, LeastSquares.Compare(Fit(humidity), additive).ExtraSumOfSquares, 1e-12);
        Close.Relative(26912, LeastSquares.Compare(Fit(environment), additive).ExtraSumOfSquares, 1e-12);
        var interaction = LeastSquares.Compare(additive, full);
        Close.Relative(55984, interaction.ExtraSumOfSquares, 1e-12);
        Close.Absolute(64.8, interaction.FValue, 0.05);
        Assert.Equal((2, 12), (interaction.ExtraDegreesOfFreedom, interaction.ResidualDegreesOfFreedom));
        Close.Relative(5184, full.ResidualSumOfSquares, 1e-12);
        Close.Relative(5184, Fit(cells).ResidualSumOfSquares, 1e-12);
    }

    private static IEnumerable<DesignColumn> Products(
        IReadOnlyList<DesignColumn> first, IReadOnlyList<DesignColumn> second) =>
        first.SelectMany(a => second.Select(b =>
            new DesignColumn($"{a.Name}, {b.Name}", a.Values.Zip(b.Values, (x, y) => x * y).ToArray())));
}
