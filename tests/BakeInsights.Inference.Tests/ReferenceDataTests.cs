using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class ReferenceDataTests
{
    [Fact]
    public void Every_reference_file_has_a_source_and_a_test_file_that_names_it()
    {
        var root = Repository.Path("tests/reference-data");
        var files = Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(root, path).Replace('\\', '/'))
            .Where(file => file != "README.md")
            .Order(StringComparer.Ordinal);
        var rows = File.ReadLines(Path.Combine(root, "README.md"))
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            .Where(cells => cells.Length == 3)
            .Skip(2)
            .ToArray();

        Assert.Equal(files, rows.Select(cells => cells[0]).Order(StringComparer.Ordinal));
        Assert.All(rows, cells =>
        {
            Assert.True(cells[1].Length > 0, $"{cells[0]} has no source.");
            var test = File.ReadAllText(Repository.Path("tests/" + cells[2]));
            Assert.Contains(Path.GetFileNameWithoutExtension(cells[0]), test, StringComparison.Ordinal);
        });
    }
}
