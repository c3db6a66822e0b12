using Xunit;

namespace BakeInsights.Tests;

public class MeasureSummaryTests
{
    // Quarters of 10, 20, 30, 50 by definition 7 of Hyndman and Fan (1996), The American Statistician 50, 361-365: at
    // the places 1.75, 2.5 and 3.25 of the ordered values, 17.5, 25 and 35.
    [Fact]
    public void Summary_has_count_ends_quarters_and_middle_of_the_bakes_that_have_the_measure()
    {
        var journal = Csv.Read(
            "baked_on,rise_min", "2026-10-01,30", "2026-10-02,", "2026-10-03,10", "2026-10-04,50", "2026-10-05,20");

        Assert.Equal(
            new MeasureSummary(Measures.RiseTime, 4, 10, 17.5, 25, 35, 50),
            MeasureSummary.Of(Measures.RiseTime, journal.Bakes));
    }

    [Fact]
    public void One_bake_is_its_own_summary() => Assert.Equal(
        new MeasureSummary(Measures.RiseTime, 1, 90, 90, 90, 90, 90),
        MeasureSummary.Of(Measures.RiseTime, Csv.Read("baked_on,rise_min", "2026-10-01,90").Bakes));

    [Fact]
    public void Measure_that_no_bake_has_is_not_summed_up()
    {
        Assert.Null(MeasureSummary.Of(Measures.RiseTime, Csv.Read("baked_on", "2026-10-01").Bakes));
        Assert.Null(MeasureSummary.Of(Measures.RiseTime, []));
    }
}
