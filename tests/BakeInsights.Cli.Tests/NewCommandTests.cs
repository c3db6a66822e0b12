using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

[Collection(nameof(Command))]
public sealed class NewCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_new_journal_has_a_header_and_a_page_and_check_takes_it()
    {
        var journal = _folder.File("mine");
        var made = Command.Run("new", journal);
        Assert.Equal((0, ""), (made.Status, made.Error));
        Assert.Equal(
            $"{journal} is a new journal. Write a line for each bake in {Path.Combine(journal, "bakes.csv")}, then run: bakeinsights check {journal}"
            + Environment.NewLine,
            made.Out);
        Assert.Equal(["README.md", "bakes.csv", "csv-metadata.json"], Directory.GetFiles(journal).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.StartsWith("bake_id,baked_on,", File.ReadAllText(Path.Combine(journal, "bakes.csv")), StringComparison.Ordinal);

        var check = Command.Run("check", journal);
        Assert.Equal("Journal mine: 0 rows read, 0 bakes kept, 0 rows set aside.\n\nEvery cell was understood.\n", check.Out);
        Assert.Equal(0, check.Status);
    }

    [Fact]
    public void The_first_bake_written_under_the_header_is_read()
    {
        var journal = _folder.File("mine");
        Command.Run("new", journal);
        var file = Path.Combine(journal, "bakes.csv");
        var header = File.ReadAllText(file).TrimEnd('\n').Split(',');
        File.AppendAllText(file, string.Join(',', header.Select(name => name == "baked_on" ? "2026-10-01" : "")) + "\n");
        var check = Command.Run("check", journal, "--json");
        Assert.Equal(0, check.Status);
        Assert.Equal(1, (int)check.Json["journal"]!["bakes"]!);
    }

    [Theory]
    [InlineData("bakes.csv")]
    [InlineData("README.md")]
    [InlineData("csv-metadata.json")]
    public void A_folder_with_a_file_of_that_name_is_left_as_it_is(string name)
    {
        var there = _folder.Write(name, "mine");
        Command.Run("new", _folder.Path).Refuses($"{there} is there already, and nothing is overwritten: choose another folder.");
        Assert.Equal("mine", File.ReadAllText(there));
        Assert.Single(Directory.GetFiles(_folder.Path));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void Its_files_are_the_same_bytes_in_every_culture(string culture)
    {
        Command.RunUnder("en-US", "new", _folder.File("usual"));
        Command.RunUnder(culture, "new", _folder.File("other"));
        Assert.All(["bakes.csv", "README.md", "csv-metadata.json"], name => Assert.Equal(
            File.ReadAllBytes(Path.Combine(_folder.File("usual"), name)), File.ReadAllBytes(Path.Combine(_folder.File("other"), name))));
    }
}
