using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

public class StarterJournalTests
{
    private static string Text(string name) => StarterJournal.Files.Single(file => file.Name == name).Text;

    [Fact]
    public void New_journal_reads_as_no_rows_and_no_notices()
    {
        using var folder = new TemporaryFolder();
        foreach (var (name, text) in StarterJournal.Files)
        {
            folder.Write(name, text);
        }

        var journal = Journal.Read(folder.Path);

        Assert.Equal((0, 0, 0), (journal.Rows, journal.Bakes.Count, journal.Notices.Count));
    }

    [Fact]
    public void Header_has_what_both_models_need()
    {
        var names = Text(StarterJournal.BakesFile).TrimEnd().Split(',');

        Assert.Subset(
            names.ToHashSet(),
            new HashSet<string>
            {
                "bake_id", "baked_on", "flour_g", "flour_measure", "water_g", "salt_g", "yeast_g", "yeast_kind", "dough_temp_c",
                "rise_min", "rise_not_ready_min", "rise_outcome", "dough_g", "loaf_count", "loaf_g", "loaf_volume_ml",
            });
    }

    [Fact]
    public void Page_lists_every_column_in_order()
    {
        var listed = Text("README.md").Split('\n').Where(line => line.StartsWith("| `", StringComparison.Ordinal))
            .Select(line => line.Split('`')[1]);

        Assert.Equal(BakeColumns.All.Select(column => column.Name), listed);
    }

    [Theory]
    [InlineData("| `dough_temp_c` | temperature of the dough when mixing ends | 0 to 50 |")]
    [InlineData("| `press_test` | what a dent in the dough did | springs_back, slow_return, keeps_dent, collapses |")]
    [InlineData("| `mixed_at` | time of day: end of mixing | 00:00 to 23:59 |")]
    [InlineData("| `notes` | anything else | text |")]
    public void Page_gives_meaning_and_range_of_a_column(string line) => Assert.Contains(line, Text("README.md").Split('\n'));

    // The units that the page promises for columns and cells.
    [Theory]
    [InlineData("dough_temp_f", "76")]
    [InlineData("flour_oz", "19")]
    [InlineData("flour_cups", "4")]
    [InlineData("rise_h", "1.5")]
    [InlineData("dough_temp_c", "76 F")]
    [InlineData("flour_g", "19 oz")]
    public void What_the_page_says_may_be_written_is_read(string header, string cell) => Assert.DoesNotContain(
        Csv.Read($"baked_on,{header}", $"2026-10-01,{cell}").Notices, notice => notice.Gravity >= Gravity.Unread);
}
