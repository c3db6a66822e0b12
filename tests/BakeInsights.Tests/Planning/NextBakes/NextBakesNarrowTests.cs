using System.Globalization;
using BakeInsights.TestKit;
using Xunit;
using Way = BakeInsights.Tests.NextKitchen.Way;

namespace BakeInsights.Tests;

/// <summary>How far eight chosen bakes narrow the best hydration, beside eight at random and a classical plan.</summary>
public class NextBakesNarrowTests
{
    // Journals of which the medians are good to a few percent; the long run takes many.
    private const int Journals = 60;
    private const int ManyJournals = 2_000;

    private static readonly int[] Starts = [6, 10, 20];

    [Fact]
    public void Table_of_widths_can_be_made_again()
    {
        var journals = Math.Min(LongRun.DataSets(2), ManyJournals);
        string[] lines =
        [
            "Width of the 95 % interval of the best hydration, in points, within the 60 to 76 % that may be baked; an interval without",
            FormattableString.Invariant($"bounds counts as all 16. Medians over {journals:N0} journals of the exact virtual kitchen."),
            "",
            "Made by `BAKEINSIGHTS_LONG_RUN=1 dotnet test tests/BakeInsights.Tests -c Release --filter NextBakesNarrowTests.Table`.",
            "",
            "| ordinary bakes before | eight by `next` | eight at random | central composite | with corners at the ends | next / random |",
            "|---|---|---|---|---|---|",
            .. Starts.Select(start =>
            {
                var widths = Enum.GetValues<Way>().ToDictionary(way => way, way => Median(way, start, journals));
                return $"| {start} | " + string.Join(" | ", widths.Values.Append(widths[Way.Next] / widths[Way.Random]).Select(width => width.ToString("F2", CultureInfo.InvariantCulture))) + " |";
            }),
        ];

        Assert.Equal(7 + Starts.Length, lines.Length);
        LongRun.Write("next-bakes", lines);
    }

    [Fact]
    public void Eight_chosen_bakes_narrow_the_best_hydration_to_three_quarters_of_eight_at_random_and_no_less_than_a_composite_plan()
    {
        var next = Median(Way.Next, 6, Journals);

        Assert.True(next <= 0.75 * Median(Way.Random, 6, Journals));
        Assert.True(next <= Median(Way.Composite, 6, Journals));
    }

    private static double Median(Way way, int start, int journals)
    {
        var widths = new double[journals];
        Parallel.For(0, journals, journal => widths[journal] = NextKitchen.Width(way, start, journal));
        return widths.Order().ElementAt(journals / 2);
    }
}
