using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>
/// The notebooks are read in one order. That the class's version of each runs without its solutions is a matter of
/// <see cref="StudentTests"/>, that each is saved without outputs one of <see cref="SavedNotebookTests"/>.
/// </summary>
public class NotebookPathTests
{
    private static readonly IReadOnlyList<string> InOrder =
    [
        "start-here.ipynb", "keep-a-journal.ipynb", "review-a-month.ipynb", "tune-the-formula.ipynb", "class-temperature.ipynb",
        "class-cups.ipynb", "class-dividing-and-volume.ipynb", "rise-curves.ipynb", "twelve-bakes.ipynb",
        "your-own-journal.ipynb", "reference-dough-and-temperature.ipynb",
    ];

    /// <summary>The notebooks of the path that are there.</summary>
    public static TheoryData<string> Path() => [.. InOrder.Where(IsThere)];

    [Fact]
    public void Every_notebook_has_its_place_in_the_path() =>
        Assert.Empty(Directory.GetFiles(Repository.Path("notebooks"), "*.ipynb").Select(System.IO.Path.GetFileName).Except(InOrder));

    [Theory]
    [MemberData(nameof(Path))]
    public void A_title_comes_first_and_asks_a_question_or_says_what_the_notebook_is_for(string file)
    {
        var words = Words(file);
        var title = Assert.Single(words.SelectMany(cell => cell.Split('\n')), line => line.StartsWith("# ", StringComparison.Ordinal));
        Assert.StartsWith(title, words[0], StringComparison.Ordinal);
        Assert.True(title.EndsWith('?') || title.Contains(": ", StringComparison.Ordinal), title);
    }

    [Theory]
    [MemberData(nameof(Path))]
    public void Previous_and_next_lead_to_the_neighbours(string file)
    {
        AssertLeads(file, "previous", -1);
        AssertLeads(file, "next", 1);
    }

    [Theory]
    [MemberData(nameof(Path))]
    public void Links_lead_to_notebooks_of_the_path(string file) => Assert.All(
        Regex.Matches(string.Join('\n', Words(file)), @"\]\((?<target>[^)\s]+\.ipynb)\)").Select(match => match.Groups["target"].Value),
        target => Assert.Contains(target, InOrder));

    [Fact]
    public void The_front_page_lists_every_notebook_in_the_order_of_the_path() => Assert.Equal(
        InOrder.Where(IsThere),
        Regex.Matches(File.ReadAllText(Repository.Path("README.md")), @"^\| \[[^\]]+\]\(notebooks/(?<file>[^)\s]+\.ipynb)\) \|", RegexOptions.Multiline)
            .Select(row => row.Groups["file"].Value));

    // "Next: [Rise curves](rise-curves.ipynb)" as well as "[Next: rise curves](rise-curves.ipynb)".
    private static void AssertLeads(string file, string word, int step)
    {
        var place = InOrder.ToList().IndexOf(file) + step;
        if (place < 0 || place >= InOrder.Count || !IsThere(InOrder[place]))
        {
            return;
        }

        var targets = Regex
            .Matches(Words(file)[^1], $@"\b{word}\b[^(]*?\]\((?<target>[^)\s]+\.ipynb)\)", RegexOptions.IgnoreCase)
            .Select(match => match.Groups["target"].Value);
        Assert.Equal([InOrder[place]], targets);
    }

    private static bool IsThere(string file) => File.Exists(Repository.Path("notebooks/" + file));

    private static List<string> Words(string file) =>
    [
        .. JsonNode.Parse(File.ReadAllText(Repository.Path("notebooks/" + file)))!["cells"]!.AsArray()
            .Where(cell => (string?)cell!["cell_type"] == "markdown")
            .Select(cell => string.Concat(cell!["source"]!.AsArray().Select(line => (string?)line))),
    ];
}
