using System.Text.Json;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

[Collection(nameof(Command))]
public sealed class CheckCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_clean_journal_is_checked_with_status_0()
    {
        var journal = _folder.Write("bakes.csv", "bake_id,baked_on,dough_temp_c\nA,2026-10-01,24\nB,2026-10-02,\n");
        var check = Command.Run("check", journal);
        Assert.Equal("Journal bakes.csv: 2 rows read, 2 bakes kept, 0 rows set aside.\n\nEvery cell was understood.\n", check.Out);
        Assert.Equal("", check.Error);
        Assert.Equal(0, check.Status);
    }

    [Fact]
    public void A_row_set_aside_is_told_with_status_1()
    {
        var check = Command.Run("check", Command.Demo);
        Assert.StartsWith("Journal millpond-lane: 46 rows read, 45 bakes kept, 1 row set aside.\n", check.Out, StringComparison.Ordinal);
        Assert.Contains("2026-13-21", check.Out, StringComparison.Ordinal);
        Assert.Equal("", check.Error);
        Assert.Equal(1, check.Status);
    }

    [Fact]
    public void A_cell_unread_costs_only_itself_and_leaves_status_0()
    {
        var journal = _folder.Write("bakes.csv", "bake_id,baked_on,dough_temp_c\nA,2026-10-01,warm\n");
        var check = Command.Run("check", journal, "--json");
        Assert.Equal(0, check.Status);
        Assert.Equal("NUMBER_UNREAD", (string?)check.Json["journal"]!["notices"]![0]!["code"]);
        Assert.Equal("unread", (string?)check.Json["journal"]!["notices"]![0]!["gravity"]);
    }

    [Fact]
    public void JSON_has_the_contracts_keys_and_the_counts_agree()
    {
        var check = Command.Run("check", Command.Demo, "--json");
        Assert.Equal(1, check.Status);
        Assert.Equal("", check.Error);
        Shape.Is(check.Json, "journal", JsonValueKind.Object);
        var journal = check.Json["journal"]!;
        Shape.IsJournal(journal);
        Assert.Equal((46, 45, 1), ((int)journal["rows"]!, (int)journal["bakes"]!, (int)journal["set_aside"]!));
        Assert.Equal(1, (int)journal["notice_counts"]!["DATE_UNREAD"]!);
        Assert.Equal(32, (int)journal["notices"]![0]!["line"]!);
    }

    [Fact]
    public void The_bakes_kept_are_written_in_canonical_columns_and_read_back_the_same()
    {
        var journal = _folder.Write(
            "bakes.csv", "baked_on,bake_id,dough_temp_f,flour_oz,rise_h,mine\n2026-10-01,A,77,35.27396194958041,1.5,kept\nnever,B,77,35,1,\n");
        var target = _folder.File("out.csv");
        Assert.Equal(1, Command.Run("check", journal, "--to", target).Status);
        Assert.Equal("bake_id,baked_on,flour_g,dough_temp_c,rise_min,mine\nA,2026-10-01,1000,25,90,kept\n", File.ReadAllText(target));
        Assert.Equal(["bakes.csv", "out.csv"], Directory.GetFiles(_folder.Path).Select(Path.GetFileName).Order());

        var again = _folder.File("again.csv");
        Assert.Equal(0, Command.Run("check", target, "--to", again).Status);
        Assert.Equal(File.ReadAllBytes(target), File.ReadAllBytes(again));
    }

    [Fact]
    public void Nothing_is_overwritten_and_only_a_CSV_file_is_written()
    {
        var journal = _folder.Write("bakes.csv", "baked_on\n2026-10-01\n");
        Command.Run("check", journal, "--to", journal)
            .Refuses($"{journal} is there already, and nothing is overwritten: give another name with --to.");
        Assert.Equal("baked_on\n2026-10-01\n", File.ReadAllText(journal));
        Command.Run("check", journal, "--to", _folder.File("out.txt"))
            .Refuses($"{_folder.File("out.txt")} can't be written: give a name that ends in .csv.");
        Command.Run("check", journal, "--to", Path.Combine(_folder.Path, "no", "out.csv"))
            .Refuses($"There is no folder {_folder.File("no")}: make it, or give another name with --to.");
        Assert.Equal(["bakes.csv"], Directory.GetFiles(_folder.Path).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void What_is_printed_and_written_is_the_same_bytes_in_every_culture(string culture)
    {
        var usual = _folder.File("usual.csv");
        var other = _folder.File("other.csv");
        Assert.Equal(
            Command.RunUnder("en-US", "check", Command.Demo, "--to", usual), Command.RunUnder(culture, "check", Command.Demo, "--to", other));
        Assert.Equal(File.ReadAllBytes(usual), File.ReadAllBytes(other));
        Assert.Equal(
            Command.RunUnder("en-US", "check", Command.Demo, "--json"), Command.RunUnder(culture, "check", Command.Demo, "--json"));
    }
}
