using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>
/// Two published experiments entered as journals with columns of their own: bread/bromate-journal.csv and
/// bread/rise-height-journal.csv. Expected values from R by r/columns.R, in r/columns-expected.csv.
/// </summary>
public class PublishedExperimentTests
{
    private static readonly Journal Bromate = Journal.Read(Repository.ReferenceData("bread/bromate-journal.csv"));
    private static readonly Journal Heights = Journal.Read(Repository.ReferenceData("bread/rise-height-journal.csv"));
    private static readonly Measure LoafVolume = ColumnMeasure.Of("loaf_volume_ml");
    private static readonly Measure Height = ColumnMeasure.Of("dough_height_cm", "Dough height");

    [Fact]
    public void Rise_time_has_Lawsons_F_for_the_height()
    {
        var answer = ColumnQuestion.Ask(Heights.Bakes, Height, "rise_min", ColumnForm.Levels).Value;

        // Lawson (2015), section 2.4, printed: F = 4.602, p = 0.042.
        Assert.Equal(4.602, answer.Test.FValue!.Value, 0.0005);
        Assert.Equal(0.042, answer.PValue, 0.0005);
        Assert.Equal((2, 9), (answer.Test.ExtraDegreesOfFreedom, answer.Test.ResidualDegreesOfFreedom));
        Nearly.Equal(RExpected.Of("rise height", "F"), answer.Test.FValue);
        Nearly.Equal(RExpected.Of("rise height", "p"), answer.PValue);
        Assert.Equal([5.4375, 8.25, 8.3125], answer.Levels.Select(level => Math.Round(level.Mean.Value, 10)));
        Assert.Equal(["35", "40", "45"], answer.Levels.Select(level => level.Level));
    }

    [Fact]
    public void A_line_in_rise_time_has_the_slope_of_R()
    {
        var answer = ColumnQuestion.Ask(Heights.Bakes, Height, "rise_min", ColumnForm.Line).Value;

        Nearly.Equal(RExpected.Of("rise height", "slope"), Assert.Single(answer.Terms).Estimate);
        Nearly.Equal(RExpected.Of("rise height", "slope p"), answer.PValue);
        Nearly.Equal(10 * RExpected.Of("rise height", "slope"), answer.Largest.Effect.Value);
    }

    [Fact]
    public void Bromate_levels_have_Larmours_F_within_flours()
    {
        var answer = ColumnQuestion.Ask(Bromate.Bakes, LoafVolume, "bromate_mg", ColumnForm.Levels, ["flour_kind"]).Value;

        Assert.Equal(85, answer.Used.Count);
        Nearly.Equal(RExpected.Of("bromate levels", "F"), answer.Test.FValue);
        Assert.Equal((4, 64), (answer.Test.ExtraDegreesOfFreedom, answer.Test.ResidualDegreesOfFreedom));
        var flour = Assert.Single(answer.Blocks);
        Assert.Equal(("flour_kind", 17, 16), (flour.Block, flour.Levels, flour.Test.ExtraDegreesOfFreedom));
        Nearly.Equal(RExpected.Of("bromate levels", "block F"), flour.Test.FValue);
        foreach (var level in answer.Levels)
        {
            Nearly.Equal(RExpected.Of("bromate levels", $"mean {level.Level}"), level.Mean.Value);
            Nearly.Equal(RExpected.Of("bromate levels", $"low {level.Level}"), level.Mean.Low);
        }
    }

    [Fact]
    public void The_largest_difference_of_bromate_levels_has_Tukeys_interval()
    {
        var largest = ColumnQuestion.Ask(Bromate.Bakes, LoafVolume, "bromate_mg", ColumnForm.Levels, ["flour_kind"]).Value.Largest;

        // R finds the studentized range's critical value to about 1e-5.
        Assert.Equal(("0", "2"), (largest.From, largest.To));
        Nearly.Equal(RExpected.Of("bromate levels", "2 less 0"), largest.Effect.Value);
        Assert.Equal(RExpected.Of("bromate levels", "2 less 0 low"), largest.Effect.Low!.Value, 1e-3);
        Assert.Equal(RExpected.Of("bromate levels", "2 less 0 high"), largest.Effect.High!.Value, 1e-3);
    }

    [Fact]
    public void A_curve_in_bromate_has_the_published_best_dose()
    {
        var answer = ColumnQuestion.Ask(Bromate.Bakes, LoafVolume, "bromate_mg", ColumnForm.Curve, ["flour_kind"]).Value;

        Assert.Equal(2.0, answer.Best!.Value, 0.05);
        Nearly.Equal(RExpected.Of("bromate curve", "best"), answer.Best.Value);
        Nearly.Equal(RExpected.Of("bromate curve", "best low"), answer.Best.Low);
        Nearly.Equal(RExpected.Of("bromate curve", "best high"), answer.Best.High);
        Nearly.Equal(RExpected.Of("bromate curve", "linear"), answer.Terms[0].Estimate);
        Nearly.Equal(RExpected.Of("bromate curve", "squared"), answer.Terms[1].Estimate);
        Nearly.Equal(RExpected.Of("bromate curve", "F"), answer.Test.FValue);
        Nearly.Equal(RExpected.Of("bromate curve", "block F"), answer.Blocks[0].Test.FValue);
        Assert.Equal(4, answer.Largest.FromNumber);
        Nearly.Equal(RExpected.Of("bromate curve", "top less 4"), answer.Largest.Effect.Value);
        Nearly.Equal(RExpected.Of("bromate curve", "top less 4 low"), answer.Largest.Effect.Low);
    }

    [Fact]
    public void Flours_as_blocks_shrink_the_scatter_as_the_experiment_is_known_for()
    {
        double Scatter(params string[] blocks) =>
            ColumnQuestion.Ask(Bromate.Bakes, LoafVolume, "bromate_mg", ColumnForm.Curve, blocks).Value.Fit.ResidualStandardDeviation;

        // Data of Larmour (1941); the rounded figures come from an analysis in R.
        Assert.Equal(104.856, Scatter(), 0.0005);
        Assert.Equal(43.456, Scatter("flour_kind"), 0.0005);
    }

    [Fact]
    public void The_published_answers_are_findings_of_a_family()
    {
        var family = FindingFamily.Judge(
            [
                ColumnQuestion.Ask(Bromate.Bakes, LoafVolume, "bromate_mg", ColumnForm.Curve, ["flour_kind"]).Value.Finding,
                ColumnQuestion.Ask(Bromate.Bakes, LoafVolume, "flour_kind", ColumnForm.Levels, ["bromate_mg"]).Value.Finding,
            ],
            []);
        Assert.Equal(["loaf_volume_ml.bromate_mg", "loaf_volume_ml.flour_kind"], family.Findings.Select(finding => finding.Name));
    }
}
