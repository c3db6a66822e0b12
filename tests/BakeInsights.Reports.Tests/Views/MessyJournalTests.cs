using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Reports.Tests;

/// <summary>What is said of each of the deliberately messy journals, word for word.</summary>
public class MessyJournalTests
{
    private const string Folder = "data-demo/messy";

    private static readonly IReadOnlyList<string> Files =
        [.. Directory.EnumerateFiles(Repository.Path(Folder), "*.csv").Select(path => Path.GetFileNameWithoutExtension(path)!).Order(StringComparer.Ordinal)];

    public static TheoryData<string> Names => [.. Files];

    [Theory]
    [MemberData(nameof(Names))]
    public void Messy_journal_is_read_or_refused_in_the_approved_words(string name) =>
        Approved.Matches($"tests/BakeInsights.Reports.Tests/Approved/messy/{name}.txt", TextOf(name));

    [Fact]
    public void Card_lists_every_file_and_every_file_has_its_approved_words()
    {
        var card = File.ReadLines(Repository.Path(Folder + "/README.md"))
            .Where(line => line.StartsWith("| `", StringComparison.Ordinal)).Select(line => line.Split('`')[1]);

        Assert.Equal(Files.Select(name => name + ".csv"), card);
        Assert.Equal(
            Files,
            Directory.EnumerateFiles(Repository.Path("tests/BakeInsights.Reports.Tests/Approved/messy"))
                .Select(path => Path.GetFileNameWithoutExtension(path)!).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Rows_read_are_the_bakes_kept_and_the_rows_refused() => Assert.All(Files, name =>
    {
        if (Read(name) is { } journal)
        {
            Assert.Equal(journal.Rows, journal.Bakes.Count + journal.Notices.Count(notice => notice.Gravity == Gravity.Refused));
        }
    });

    private static string TextOf(string name)
    {
        try
        {
            return JournalView.Of(Journal.Read(PathOf(name))).ToText();
        }
        catch (JournalFileException refused)
        {
            return $"Refused: {refused.Reason} {refused.Remedy}\n";
        }
    }

    private static Journal? Read(string name)
    {
        try
        {
            return Journal.Read(PathOf(name));
        }
        catch (JournalFileException)
        {
            return null;
        }
    }

    private static string PathOf(string name) => Repository.Path($"{Folder}/{name}.csv");
}
