using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>
/// The answers about causes in the demo journal against base R (r/demo_findings.R, run once with R 4.2), which works the
/// steps, the joint tests and Holm's adjustment out by itself; and against the demo's stated truth.
/// </summary>
public class DemoFindingsTests
{
    private static readonly CauseAnswers Causes = CauseAnswers.Of(DemoJournal.Journal.Bakes);

    private static readonly FindingFamily Family = FindingFamily.Judge(Causes.Answers, Causes.Open);

    [Fact]
    public void Effects_bends_and_p_values_are_those_of_R()
    {
        var rows = File.ReadLines(Repository.ReferenceData("r/demo_findings.csv")).Skip(1).Select(line => line.Split(',')).ToList();
        Assert.Equal(rows.Select(row => row[0]), Family.Answers.Select(answer => answer.Name));
        foreach (var (row, answer) in rows.Zip(Family.Answers))
        {
            Assert.Equal(int.Parse(row[1], CultureInfo.InvariantCulture), answer.Bakes.Count);
            Near(row[2], answer.Effect.Value);
            Near(row[3], answer.Effect.Low!.Value);
            Near(row[4], answer.Effect.High!.Value);
            Assert.Equal(row[5].Trim() == "NA", answer.Bend is null);
            if (answer.Bend is { } bend)
            {
                Near(row[5], bend.Value);
                Near(row[6], bend.Low!.Value);
                Near(row[7], bend.High!.Value);
            }

            Near(row[8], answer.PValue);
            Near(row[9], answer.FamilyPValue);
        }
    }

    // The demo's truth: temperature, yeast and hydration move the rise, salt hardly, the line doesn't bend; nothing moves
    // the proof; hydration and temperature move volume, the proof doesn't.
    [Fact]
    public void What_is_found_is_what_the_demo_was_made_with() => Assert.Equal(
        [
            ("rise_time.dough_temperature", Strength.Firm),
            ("rise_time.yeast", Strength.Firm),
            ("rise_time.hydration", Strength.BorneOut),
            ("rise_time.salt", Strength.Open),
            ("rise_time.dough_temperature_curve", Strength.Open),
            ("proof_time.dough_temperature", Strength.Open),
            ("proof_time.yeast", Strength.Open),
            ("proof_time.hydration", Strength.Open),
            ("loaf_volume.hydration", Strength.Firm),
            ("loaf_volume.dough_temperature", Strength.Firm),
            ("loaf_volume.proof_time", Strength.Open),
        ],
        Family.Answers.Select(answer => (answer.Name, answer.Strength)));

    [Fact]
    public void What_is_not_logged_stays_open_with_what_to_do()
    {
        var open = Assert.Single(Family.Open);
        Assert.Equal(
            new OpenQuestion(
                "rise_time.sugar",
                "Was the first rise quicker or slower with more sugar?",
                "It is not in the journal.",
                "Bake pairs of doughs that differ in sugar alone, by a step or two to each side of the usual."),
            open);
    }

    private static void Near(string expected, double actual)
    {
        var value = double.Parse(expected, CultureInfo.InvariantCulture);
        Assert.True(Math.Abs(actual - value) <= 1e-8 * Math.Max(Math.Abs(value), 1e-3), $"Expected {value:R}, got {actual:R}.");
    }
}
