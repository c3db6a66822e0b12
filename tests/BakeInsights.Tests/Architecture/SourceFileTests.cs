using Xunit;

namespace BakeInsights.Tests;

public class SourceFileTests
{
    private const int MostLines = 300;

    // One file holds the words of all notices, however many those are: one job, and one place to read them.
    private const string AllNotices = "src/BakeInsights/Journals/Notices.cs";

    public static TheoryData<string> Folders => ["src", "tests"];

    [Theory]
    [MemberData(nameof(Folders))]
    public void No_source_file_is_longer_than_300_lines(string folder) => Assert.DoesNotContain(
        Sources.Below(folder, ".cs"), path => path != AllNotices && Sources.Text(path).Count(letter => letter == '\n') > MostLines);
}
