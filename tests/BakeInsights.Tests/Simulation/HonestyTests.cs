using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>
/// Whether findings keep their word, over months with a known truth. The long runs of the tables in docs/coverage are made
/// by the same code with BAKEINSIGHTS_LONG_RUN=1.
/// </summary>
public class HonestyTests
{
    private const int ShortRun = 400;

    private static readonly KitchenTruth Nothing = new KitchenTruth { RiseResidualSd = 0.10 }.WithoutEffects();

    public static TheoryData<int> Lengths => new(12, 20, 40);

    [Theory]
    [MemberData(nameof(Lengths))]
    public void A_month_in_which_nothing_matters_prints_a_finding_one_time_in_twenty_at_most(int bakes)
    {
        var months = LongRun.DataSets(ShortRun);
        var (found, asked) = (0, 0);
        foreach (var (any, questions) in LongRun.Simulate(months, bakes, random => Judged(random, bakes, Nothing)))
        {
            found += any.Any(answer => answer.IsFinding) ? 1 : 0;
            asked += questions;
        }

        // Of 400 months with a chance of 5 % at most 34 print one, but for one time in a thousand: qbinom(0.999, 400, 0.05)
        // in R 4.2. In a long run of 10,000 at most 5.5 % may.
        Assert.InRange(found, 0, months == ShortRun ? 34 : (int)(0.055 * months));
        LongRun.Write(
            $"findings-nothing-{bakes}",
            [
                "| bakes | months | questions a month | months with a finding |",
                "|---|---|---|---|",
                $"| {bakes} | {months} | {Rounded((double)asked / months)} | {LongRun.Percent((double)found / months)} % |",
            ]);
    }

    [Theory]
    [MemberData(nameof(Lengths))]
    public void Printed_intervals_hold_the_truth_and_temperature_is_found(int bakes)
    {
        var months = LongRun.DataSets(ShortRun);
        List<string> lines = ["| bakes | noise | months | intervals | hold the truth | temperature found |", "|---|---|---|---|---|---|"];
        foreach (var noise in new[] { 0.10, 0.15 })
        {
            var truth = new KitchenTruth { RiseResidualSd = noise };
            var (printed, held, found) = (0, 0, 0);
            foreach (var (answers, _) in LongRun.Simulate(months, bakes, random => Judged(random, bakes, truth)))
            {
                foreach (var (estimate, real) in answers.SelectMany(answer => Printed(answer, truth)))
                {
                    printed++;
                    held += estimate.Low <= real && real <= estimate.High ? 1 : 0;
                }

                found += answers.Any(answer => answer is { Name: "rise_time.dough_temperature", IsFinding: true }) ? 1 : 0;
            }

            // Intervals of one month share its noise, so the room is that of as many months.
            Assert.InRange((double)held / printed, 0.93, 0.97);
            if (bakes >= 20 && noise == 0.10)
            {
                Assert.InRange((double)found / months, 0.95, 1);
            }

            lines.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"| {bakes} | {noise:P0} | {months} | {printed} | {LongRun.Percent((double)held / printed)} % | {LongRun.Percent((double)found / months)} % |"));
        }

        LongRun.Write($"findings-trade-{bakes}", lines);
    }

    [Fact]
    public void Handbooks_narrow_short_journals_and_a_far_truth_is_called_a_conflict()
    {
        var months = LongRun.DataSets(ShortRun);
        var trade = new KitchenTruth { RiseResidualSd = 0.10 };
        var few = LongRun.Simulate(months, 8, random => Compared(random, 8, trade));
        var covered = few.Count(one => one.Together.Low <= trade.RiseDoughTemperature && trade.RiseDoughTemperature <= one.Together.High);
        var narrowing = Median(few.Select(one => Width(one.Together) / Width(one.Journal)));

        // Three of the band's standard deviations off its middle: -0.09 - 3 x 0.04.
        var far = trade with { RiseDoughTemperature = -0.21 };
        var conflicts = LongRun.Simulate(months, 20, random => Compared(random, 20, far)).Count(one => one.IsConflict);
        LongRun.Write(
            "findings-handbooks",
            [
                "| bakes | months | truth | median width with handbooks / without | hold the truth | conflict said |",
                "|---|---|---|---|---|---|",
                $"| 8 | {months} | in the band | {Rounded(narrowing)} | {LongRun.Percent((double)covered / months)} % | |",
                $"| 20 | {months} | three deviations off | | | {LongRun.Percent((double)conflicts / months)} % |",
            ]);
        Assert.InRange(narrowing, 0, 2 / 3.0);
        Assert.InRange((double)covered / months, 0.93, 1);
        Assert.InRange((double)conflicts / months, 0.95, 1);
    }

    // What is in the cup scatters about its nominal weight, so slopes on the nominal hydration stay right: no correction is
    // made, and the wider scatter is in the intervals. The time is a little longer on average for a dough of lighter
    // cups, which the room of the first check allows for.
    [Fact]
    public void Cups_leave_the_slope_on_hydration_as_it_is()
    {
        const int bakes = 40;
        const double scooped = 0.061;
        var months = LongRun.DataSets(ShortRun);
        var truth = Nothing with { RiseHydration = -0.02, RiseLogYeast = -0.8 };
        var slopes = LongRun.Simulate(months, 7, random => RiseTime
            .Ask(ExactKitchen.Month(random.Next(), truth, bakes, flourRelativeSd: scooped)).Value.Coefficient(RiseTime.HydrationTerm)!);
        var bias = (slopes.Average(slope => slope.Estimate) / truth.RiseHydration) - 1;
        var held = (double)slopes.Count(slope => slope.Interval(ModelAnswer.Level).Contains(truth.RiseHydration)) / months;
        LongRun.Write(
            "findings-cups",
            [
                "| bakes | months | spread of a cup | bias of the slope | hold the truth |",
                "|---|---|---|---|---|",
                $"| {bakes} | {months} | {LongRun.Percent(scooped)} % | {LongRun.Percent(bias)} % | {LongRun.Percent(held)} % |",
            ]);
        Assert.InRange(bias, -0.05, 0.05);
        Assert.InRange(held, 0.92, 0.98);
    }

    private static (IReadOnlyList<Finding> Answers, int Asked) Judged(Random random, int bakes, KitchenTruth truth)
    {
        var causes = CauseAnswers.Of(ExactKitchen.Month(random.Next(), truth, bakes));
        var family = FindingFamily.Judge(causes.Answers, causes.Open);
        return (family.Answers, family.Answers.Count);
    }

    private static HandbookComparison Compared(Random random, int bakes, KitchenTruth truth) =>
        RiseTime.Ask(ExactKitchen.Month(random.Next(), truth, bakes)).Value.WithHandbooks().Value
            .Single(one => one.Term == RiseTime.DoughTemperatureTerm);

    // What the intervals of an answer should hold, for the dough that the answer speaks of.
    private static IEnumerable<(Estimate Estimate, double Real)> Printed(Finding answer, KitchenTruth truth)
    {
        var typical = DoughSettings.MedianOf(answer.Bakes);
        double At(Measure measure) => typical[measure]!.Value;
        var (warmth, wet) = (At(Measures.DoughTemperature) - 24, At(Measures.Hydration) - 65);
        double Minutes(double ln) => truth.RiseMinutesAtCentre
            * Math.Exp((truth.RiseDoughTemperature * warmth) + (truth.RiseHydration * wet) + (truth.RiseLogYeast * Math.Log(At(Measures.Yeast)))
                + (truth.RiseSalt * At(Measures.Salt)))
            * (Math.Exp(ln) - 1);
        yield return answer.Name switch
        {
            "rise_time.dough_temperature" => (answer.Effect, Minutes(2 * truth.RiseDoughTemperature)),
            "rise_time.yeast" => (answer.Effect, Minutes(Math.Log(1.25) * truth.RiseLogYeast)),
            "rise_time.hydration" => (answer.Effect, Minutes(3 * truth.RiseHydration)),
            "rise_time.salt" => (answer.Effect, Minutes(0.5 * truth.RiseSalt)),
            "rise_time.dough_temperature_curve" => (answer.Effect, 0),
            "loaf_volume.hydration" => (answer.Effect, (3 * truth.VolumeHydration) + (truth.VolumeHydrationSquared * ((6 * wet) + 9))),
            "loaf_volume.dough_temperature" =>
                (answer.Effect, (2 * truth.VolumeDoughTemperature) + (truth.VolumeDoughTemperatureSquared * ((4 * warmth) + 4))),
            _ => throw new ArgumentOutOfRangeException(nameof(answer), answer.Name, "No truth is stated."),
        };
        if (answer.Bend is { } bend)
        {
            yield return (bend, answer.Name == "loaf_volume.hydration" ? 9 * truth.VolumeHydrationSquared : 4 * truth.VolumeDoughTemperatureSquared);
        }
    }

    private static double Width(Estimate estimate) => estimate.High!.Value - estimate.Low!.Value;

    private static double Median(IEnumerable<double> values)
    {
        double[] ordered = [.. values.Order()];
        return ordered[ordered.Length / 2];
    }

    private static string Rounded(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);
}
