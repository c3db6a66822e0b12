using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>The class's demo journal, its card, and the program that made it.</summary>
public class ClassDemoTests
{
    private const string Folder = "data-demo/osier-yard";

    private static readonly string Card = File.ReadAllText(Repository.Path(Folder + "/README.md"));
    private static readonly Journal Journal = Journal.Read(Repository.Path(Folder));

    public static TheoryData<string, string, double> Truths
    {
        get
        {
            var rows = new TheoryData<string, string, double>();
            foreach (var (term, value) in ClassDemo.Kitchen.RiseTimeTruth.Where(truth => truth.Key != RiseTime.SugarTerm))
            {
                rows.Add("rise time", term, value);
            }

            foreach (var (term, value) in ClassDemo.Kitchen.LoafVolumeTruth)
            {
                rows.Add("loaf", term, value);
            }

            return rows;
        }
    }

    [Fact]
    public void Demo_files_are_what_the_virtual_kitchen_writes_byte_for_byte()
    {
        var seed = int.Parse(Regex.Match(Card, @"The seed is (\d+)\.").Groups[1].Value, CultureInfo.InvariantCulture);
        var files = ClassDemo.Files(seed);
        Assert.All(files, file => Assert.Equal(
            Encoding.UTF8.GetBytes(file.Value), File.ReadAllBytes(Repository.Path($"{Folder}/{file.Key}"))));
        Assert.Equal(
            files.Keys,
            Directory.GetFiles(Repository.Path(Folder), "*.csv").Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Demo_is_read_without_a_notice()
    {
        Assert.Empty(Journal.Notices);
        Assert.Equal(0, Journal.SetAside);
        Assert.Contains($"`bakes.csv` has {Journal.Rows} rows.", Card, StringComparison.Ordinal);
    }

    [Fact]
    public void Demo_has_two_months_three_benches_three_judges_cups_and_stopped_rises()
    {
        Assert.Equal(["2026-09", "2026-10"], Journal.Months);
        Assert.Equal(3, Journal.Bakes.Select(bake => bake[BakeColumns.Group]).Distinct().Count());
        Assert.Equal(3, Journal.Scores.Select(score => score.Judge).Distinct().Count());
        Assert.Equal(["crumb", "openness", "flavour"], Journal.Attributes.Select(attribute => attribute.Name));
        Assert.Contains(Journal.Bakes, bake => bake.FlourByCup);
        Assert.Contains(Journal.Bakes, bake => !bake.FlourByCup);
        Assert.Contains(Journal.Bakes, bake => bake.RiseOutcome == RiseOutcome.Stopped);
        Assert.Equal(30, Journal.Cups.Count);
        Assert.All(Journal.Bakes, bake => Assert.True(Journal.Loaves.Count(loaf => loaf.BakeId == bake.Id) >= 1));
    }

    [Fact]
    public void Judges_sit_at_different_places_of_the_scale() =>
        Assert.True(Journal.Scores.GroupBy(score => score.Judge).Select(judge => judge.Average(score => score.Value)).Order().ToList()
            is [var low, _, var high] && high - low > 0.5);

    [Theory]
    [MemberData(nameof(Truths))]
    public void Card_prints_the_truth_of_the_program(string part, string term, double truth)
    {
        var table = Card[Card.IndexOf($"| {part}:", StringComparison.Ordinal)..];
        var cell = Regex.Match(table, $@"^\| {term}(?:,[^|]*)? \| (?:[^|=:]*= )?(-?\d+(?:\.(\d+))?)", RegexOptions.Multiline);
        Assert.True(cell.Success, $"The card has no row {term} for {part}.");
        var printed = double.Parse(cell.Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.Equal(truth, printed, 0.5 * Math.Pow(10, -cell.Groups[2].Length));
    }

    [Theory]
    [InlineData("bakers, rise", "BakerRiseSd")]
    [InlineData("bakers, volume", "BakerVolumeSd")]
    [InlineData("benches, rise", "BenchRiseSd")]
    [InlineData("benches, volume", "BenchVolumeSd")]
    public void Card_prints_how_far_people_differ(string row, string setting)
    {
        var value = (double)typeof(KitchenHands).GetProperty(setting)!.GetValue(ClassDemo.Kitchen.Hands)!;
        Assert.Contains(FormattableString.Invariant($"| {row} | {value} |"), Card, StringComparison.Ordinal);
    }
}
