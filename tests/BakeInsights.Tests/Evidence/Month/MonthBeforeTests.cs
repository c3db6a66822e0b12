using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>A month against the month before, with expected values of base R (r/comparisons.R, run once with R 4.2).</summary>
public class MonthBeforeTests
{
    private static readonly Dictionary<(string Case, string Quantity), double> Expected =
        File.ReadLines(Repository.ReferenceData("r/comparisons-expected.csv"))
            .Skip(1)
            .Select(line => line.Split(','))
            .ToDictionary(cells => (cells[0], cells[1]), cells => double.Parse(cells[2], CultureInfo.InvariantCulture));

    // Nineteen doughs of November, the rise 6 % longer, after 31 of October.
    private static readonly TwoMonths Months = Split(
        Dough.Bakes(50, (dough, index) => index < 31 ? dough : dough with { RiseMin = 1.06 * dough.RiseMin }), 31);

    private static readonly Asked Answered = AskOf(Months);

    [Fact]
    public void Rise_time_is_compared_between_doughs_made_alike()
    {
        var finding = Finding("month.rise_time");
        Nearly.Equal(Expected[("adjusted", "percent")], finding.EffectPct!.Value);
        Nearly.Equal(Expected[("adjusted", "low")], finding.EffectPct.Low);
        Nearly.Equal(Expected[("adjusted", "high")], finding.EffectPct.High);
        Assert.Equal(Expected[("adjusted", "p")], finding.PValue, 1e-10);
        Assert.Equal(50, finding.Bakes.Count);
        Assert.Equal(finding.EffectPct.Value / finding.EffectPct.High!.Value, finding.Effect.Value / finding.Effect.High!.Value, 1e-10);
    }

    [Fact]
    public void Rise_time_as_logged_is_compared_in_percent()
    {
        var finding = Finding("month.rise_time_as_logged");
        Nearly.Equal(Expected[("logged", "percent")], finding.EffectPct!.Value);
        Nearly.Equal(Expected[("logged", "p")], finding.PValue);
    }

    [Fact]
    public void Hydration_is_compared_by_its_mean()
    {
        var finding = Finding("month.hydration");
        Nearly.Equal(Expected[("hydration", "low")], finding.Effect.Low);
        Nearly.Equal(Expected[("hydration", "high")], finding.Effect.High);
        Nearly.Equal(Expected[("hydration", "p")], finding.PValue);
        Assert.Null(finding.EffectPct);
        Assert.Equal("2026-11 against 2026-10", finding.Contrast.Words);
    }

    [Fact]
    public void A_measure_that_was_not_logged_stays_an_open_question() =>
        Assert.Equal(["month.bake_loss"], Answered.Open.Select(open => open.Name));

    [Fact]
    public void Without_a_month_before_every_question_stays_open()
    {
        var asked = AskOf(new TwoMonths("2026-10", null, Months.BakesBefore, []));
        Assert.Empty(asked.Answers);
        Assert.Equal(
            [
                "month.dough_temperature", "month.rise_time", "month.rise_time_as_logged", "month.specific_volume", "month.hydration",
                "month.bake_loss",
            ],
            asked.Open.Select(open => open.Name));
        Assert.All(asked.Open, open => Assert.Equal("The journal has no bakes before 2026-10.", open.Reason));
    }

    [Fact]
    public void Settings_that_changed_with_the_month_leave_the_rise_time_open()
    {
        var bakes = Dough.Bakes(20, (dough, index) => new Dough { Celsius = index < 10 ? 22 : 26, RiseMin = dough.RiseMin });
        var open = AskOf(Split(bakes, 10)).Open.Single(one => one.Name == "month.rise_time");
        Assert.Equal("The settings changed together with the month, so the journal can't tell the month from them.", open.Reason);
    }

    [Fact]
    public void A_span_is_taken_halfway_so_that_rarer_looks_do_not_read_as_a_change()
    {
        var bakes = Dough.Bakes(24, (dough, index) => dough with
        {
            NotReadyMin = dough.RiseMin * (index < 12 ? 0.9 : 0.6),
            RiseMin = dough.RiseMin * (index < 12 ? 1.1 : 1.4),
        });
        var exact = AskOf(Split(Dough.Bakes(24, (dough, _) => dough), 12));
        Nearly.Equal(
            exact.Answers.Single(answer => answer.Name == "month.rise_time_as_logged").Effect.Value,
            AskOf(Split(bakes, 12)).Answers.Single(answer => answer.Name == "month.rise_time_as_logged").Effect.Value);
    }

    [Fact]
    public void One_mistyped_loaf_is_named_and_the_answer_given_without_it()
    {
        var bakes = Dough.Bakes(40, (dough, index) => dough with
        {
            SpecificVolume = index == 35 ? 11 : 4 + (0.05 * (index * 3 % 7)),
        });
        var finding = AskOf(Split(bakes, 20)).Answers.Single(answer => answer.Name == "month.specific_volume");
        Assert.Equal(["B36"], finding.OddBakes.Select(odd => odd.Bake.Id));
        Assert.True(finding.WithoutOddBakes!.Value < finding.Effect.Value);
    }

    [Theory]
    [InlineData(14, 11)]
    [InlineData(12, 5)]
    public void Months_in_which_nothing_changed_differ_by_chance_in_at_most_one_of_twenty(int before, int now)
    {
        const int journals = 2000;
        var hits = new Dictionary<string, int>();
        for (var seed = 0; seed < journals; seed++)
        {
            var chance = new Chance(seed);
            var bakes = Dough.Bakes(before + now, (_, _) => Ordinary(chance));
            foreach (var answer in AskOf(Split(bakes, before)).Answers)
            {
                hits[answer.Name] = hits.GetValueOrDefault(answer.Name) + (answer.PValue <= 0.05 ? 1 : 0);
            }
        }

        // Four standard deviations of a binomial count.
        var most = (0.05 * journals) + (4 * Math.Sqrt(journals * 0.05 * 0.95));
        Assert.Equal(5, hits.Count);
        Assert.All(hits, pair => Assert.True(pair.Value <= most, $"{pair.Key} differed in {pair.Value} of {journals} journals."));
        Assert.InRange(hits["month.rise_time"], (2 * 0.05 * journals) - most, most);
    }

    private static Dough Ordinary(Chance chance)
    {
        var celsius = 24 + Math.Clamp(1.5 * chance.Normal(), -6, 6);
        var hydration = 66 + Math.Clamp(3 * chance.Normal(), -12, 12);
        return new Dough
        {
            Celsius = celsius,
            HydrationPct = hydration,
            YeastPct = chance.Pick(0.8, 1.0, 1.2),
            RiseMin = 100 * Math.Exp((-0.09 * (celsius - 24)) + (0.1 * chance.Normal())),
            SpecificVolume = 4 + Math.Clamp(0.3 * chance.Normal(), -1.5, 1.5),
        };
    }

    private static Finding Finding(string name) => Answered.Answers.Single(answer => answer.Name == name);

    private static TwoMonths Split(IReadOnlyList<Bake> bakes, int before) =>
        new("2026-11", "2026-10", [.. bakes.Skip(before)], [.. bakes.Take(before)]);

    private static Asked AskOf(TwoMonths months)
    {
        var asked = new Asked();
        MonthBefore.Ask(asked, months);
        return asked;
    }
}
