using Xunit;

namespace BakeInsights.Tests;

public class SourceFileTests
{
    private const int MostLines = 300;

    public static TheoryData<string> Folders => ["src", "tests"];

    [Theory]
    [MemberData(nameof(Folders))]
    public void No_source_file_is_longer_than_300_lines(string folder) => Assert.DoesNotContain(
        Sources.Below(folder, ".cs"), path => Sources.Text(path).Count(letter => letter == '\n') > MostLines);
}
