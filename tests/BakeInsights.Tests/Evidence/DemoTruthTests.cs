using System.Globalization;
using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>The demo journal's card, the program that made the journal, and what a fit finds in it.</summary>
public class DemoTruthTests
{
    private static readonly string Card = File.ReadAllText(Repository.Path(DemoJournal.Folder + "/README.md"));
    private static readonly KitchenTruth Truth = new();

    // The trade's statement: 1 °C warmer makes yeast about 10 % more active ("The science of fermentation", trade article).
    private const double TradePercentPerDegree = 10;

    public static TheoryData<string, string, double> Truths => new()
    {
        { "rise time", "intercept", Math.Log(Truth.RiseMinutesAtCentre) },
        { "rise time", "dough_temperature", Truth.RiseDoughTemperature },
        { "rise time", "hydration", Truth.RiseHydration },
        { "rise time", "log_yeast", Truth.RiseLogYeast },
        { "rise time", "salt", Truth.RiseSalt },
        { "loaf", "intercept", Truth.VolumeAtCentre },
        { "loaf", "hydration", Truth.VolumeHydration },
        { "loaf", "hydration_squared", Truth.VolumeHydrationSquared },
        { "loaf", "dough_temperature", Truth.VolumeDoughTemperature },
        { "loaf", "dough_temperature_squared", Truth.VolumeDoughTemperatureSquared },
        { "loaf", "hydration_x_dough_temperature", Truth.VolumeHydrationXDoughTemperature },
    };

    [Fact]
    public void The_demo_journal_is_what_the_virtual_kitchen_writes_byte_for_byte()
    {
        var seed = int.Parse(Regex.Match(Card, @"The seed is (\d+)\.").Groups[1].Value, CultureInfo.InvariantCulture);
        var written = System.Text.Encoding.UTF8.GetBytes(DemoMonth.BakesCsv(seed, Truth));
        Assert.Equal(35, seed);
        Assert.Equal(written, File.ReadAllBytes(Repository.Path(DemoJournal.Folder + "/bakes.csv")));
    }

    [Fact]
    public void Another_seed_or_truth_writes_another_journal()
    {
        var demo = DemoMonth.BakesCsv(35, Truth);
        Assert.NotEqual(demo, DemoMonth.BakesCsv(36, Truth));
        Assert.NotEqual(demo, DemoMonth.BakesCsv(35, Truth with { RiseMinutesAtCentre = 120 }));
    }

    [Theory]
    [MemberData(nameof(Truths))]
    public void The_card_prints_the_truth_of_the_program(string part, string term, double truth)
    {
        var (value, halfOfLastDigit) = OnCard(part, term);
        Assert.Equal(truth, value, halfOfLastDigit);
    }

    [Fact]
    public void The_card_prints_the_spreads_of_the_program()
    {
        Assert.Equal(Truth.RiseResidualSd, OnCard("rise time", "spread of one bake").Value);
        Assert.Equal(Truth.VolumeResidualSd, OnCard("loaf", "spread of one bake").Value);
    }

    [Theory]
    [MemberData(nameof(Truths))]
    public void The_fitted_interval_of_every_term_holds_its_truth(string part, string term, double truth)
    {
        ModelAnswer answer = part == "loaf" ? DemoJournal.LoafVolume : DemoJournal.RiseTime;
        Assert.True(answer.Coefficient(term)!.Interval(ModelAnswer.Level).Contains(truth));
    }

    [Fact]
    public void The_trades_ten_percent_a_degree_lies_in_the_interval_of_dough_temperature()
    {
        var slope = DemoJournal.RiseTime.Coefficient(RiseTime.DoughTemperatureTerm)!.Interval(ModelAnswer.Level);
        var q10 = DemoJournal.RiseTime.Q10!;
        Assert.True(slope.Contains(-Math.Log(1 + (TradePercentPerDegree / 100))));

        // 1.1^10 = 2.594.
        Assert.InRange(Math.Pow(1 + (TradePercentPerDegree / 100), 10), q10.Low!.Value, q10.High!.Value);
        Assert.InRange(2.594, q10.Low.Value, q10.High.Value);
        Assert.Contains("Q10 2.594", Card, StringComparison.Ordinal);
    }

    [Fact]
    public void The_interval_of_best_hydration_holds_the_cards()
    {
        var printed = Regex.Match(Card, @"best hydration at 24 °C is ([\d.]+) %").Groups[1].Value;
        var truth = ModelAnswer.CentreHydrationPct - (Truth.VolumeHydration / (2 * Truth.VolumeHydrationSquared));
        Assert.Equal("70.0", printed);
        Assert.Equal(70, truth, 1e-12);
        var best = DemoJournal.LoafVolume.BestHydration!;
        Assert.InRange(truth, best.Low!.Value, best.High!.Value);
    }

    [Fact]
    public void The_card_counts_the_rows_and_the_journal_has_its_slip()
    {
        Assert.Contains($"`bakes.csv` has {DemoJournal.Journal.Rows} rows.", Card, StringComparison.Ordinal);
        var slip = Assert.Single(DemoJournal.Journal.Notices);
        Assert.Equal(("DATE_UNREAD", "2026-13-21"), (slip.Code, slip.Text));
    }

    // A row reads "| name, what it counts | [expression =] value[: more] |"; the two tables start with their part's name.
    private static (double Value, double HalfOfLastDigit) OnCard(string part, string name)
    {
        var table = Card[Card.IndexOf($"| {part}:", StringComparison.Ordinal)..];
        var cell = Regex.Match(table, $@"^\| {Regex.Escape(name)}(?:,[^|]*)? \| (?:[^|=:]*= )?(-?\d+(?:\.(\d+))?)", RegexOptions.Multiline);
        Assert.True(cell.Success, $"The card has no row {name} for {part}.");
        return (
            double.Parse(cell.Groups[1].Value, CultureInfo.InvariantCulture),
            0.5 * Math.Pow(10, -cell.Groups[2].Length));
    }
}
