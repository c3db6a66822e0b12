using Xunit;

namespace BakeInsights.Reports.Tests;

public class JournalViewTests
{
    [Fact]
    public void One_of_a_thing_is_singular()
    {
        var one = Demo.Read("bake_id,baked_on", "A,2026-10-01");
        Assert.Equal(
            "Journal bakes.csv: 1 row read, 1 bake kept, 0 rows set aside.\n\nEvery cell was understood.\n", JournalView.Of(one).ToText());
        var aside = Demo.Read("bake_id,baked_on", "A,2026-10-01", "B,2026-10-02", "C,never");
        var text = JournalView.Of(aside).ToText();
        Assert.StartsWith("Journal bakes.csv: 3 rows read, 2 bakes kept, 1 row set aside.\n\n1 notice: ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Notices_stand_with_the_gravest_first_and_say_where()
    {
        var journal = Demo.Read("bake_id,baked_on,dough_temp_c,oddity", "A,2026-10-01,warm,x", "B,never,24,y");
        var table = JournalView.Of(journal).Blocks.OfType<ViewTable>().Single();
        Assert.Equal(["refused", "unread", "noted"], table.Rows.Select(row => row[1]));
        Assert.Equal(
            ["bakes.csv line 3, baked_on", "bakes.csv line 2, dough_temp_c", "bakes.csv line 1, oddity"], table.Rows.Select(row => row[0]));
        Assert.Equal(["never", "warm", "oddity"], table.Rows.Select(row => row[2]));
    }

    [Fact]
    public void A_long_cell_is_cut_to_forty_characters()
    {
        var journal = Demo.Read("bake_id,baked_on", $"A,{new string('x', 200)}");
        var shown = JournalView.Of(journal).Blocks.OfType<ViewTable>().Single().Rows[0][2];
        Assert.Equal(new string('x', 39) + "…", shown);
    }

    [Fact]
    public void Bakes_show_what_was_logged_and_a_dash_for_what_was_not()
    {
        var journal = Demo.Read(
            "bake_id,baked_on,flour_g,water_g,salt_g,dough_temp_c,rise_min,loaf_g,loaf_volume_ml",
            "A,2026-10-01,1000,650,20,23.5,95,800,3200",
            "B,2026-10-02,1000,,20,,,,");
        var rows = BakesView.Of(journal.Bakes, UnitSystem.Metric).Blocks.OfType<ViewTable>().Single().Rows;
        Assert.Equal(["A", "2026-10-01", "65.0", "–", "2.0", "23.5", "95", "4.00", "–"], rows[0]);
        Assert.Equal(["B", "2026-10-02", "–", "–", "–", "–", "–", "–", "–"], rows[1]);
    }

    // 4 spooned cups: sd of the flour sqrt(0.04² + 0.03²/4) = 4.27 %, of 65 % hydration 2.8 and of 2 % salt 0.1.
    [Fact]
    public void Flour_by_the_cup_shows_its_standard_deviation_and_what_it_means()
    {
        var journal = Demo.Read(
            "bake_id,baked_on,flour_g,flour_measure,water_g,salt_g",
            "A,2026-10-01,504,spooned,327.6,10.08",
            "B,2026-10-02,500,weighed,325,10");
        var table = BakesView.Of(journal.Bakes, UnitSystem.Metric).Blocks.OfType<ViewTable>().Single();
        Assert.Equal(["A", "2026-10-01", "65.0 ± 2.8", "–", "2.0 ± 0.1", "–", "–", "–", "–"], table.Rows[0]);
        Assert.Equal(["B", "2026-10-02", "65.0", "–", "2.0", "–", "–", "–", "–"], table.Rows[1]);
        Assert.Equal(
            "2 bakes. A dash is a cell that was not logged or not understood. "
            + "± is one standard deviation, from flour by the cup; it moves all percentages of a bake together.",
            table.Caption);
    }

    [Fact]
    public void The_summary_has_counts_ends_middle_and_quarter_points()
    {
        var journal = Demo.Read(
            "bake_id,baked_on,dough_temp_c,sugar_g",
            "A,2026-10-01,20,", "B,2026-10-02,22,", "C,2026-10-03,23,", "D,2026-10-04,24,", "E,2026-10-05,30,");
        var table = BakesView.Summary(journal.Bakes, UnitSystem.Us).Blocks.OfType<ViewTable>().Single();
        var row = Assert.Single(table.Rows);

        // 20, 22, 23, 24 and 30 °C: the quarter points of five values are the second and the fourth.
        Assert.Equal(["Dough temperature (°F)", "5", "68", "72", "73", "75", "86"], row);
    }

    [Fact]
    public void Text_keeps_to_its_width()
    {
        foreach (var width in new[] { 40, 60, 80, 120 })
        {
            // A column is never narrower than eight characters, and two stand between columns.
            foreach (var view in Demo.FitViews(UnitSystem.Metric).Where(view => MostColumns(view) * 10 <= width))
            {
                Assert.All(view.ToText(width).Split('\n'), line => Assert.True(line.Length <= width, line));
            }
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => Demo.FitViews(UnitSystem.Metric)[0].ToText(10));
    }

    private static int MostColumns(View view) => view.Blocks.OfType<ViewTable>().Select(table => table.Columns.Count).DefaultIfEmpty(0).Max();
}
