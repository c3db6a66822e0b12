using Xunit;

namespace BakeInsights.Tests;

public class BakeIdSeriesTests
{
    [Theory]
    [InlineData("ML-47", "ML-45", "ML-46")]
    [InlineData("ML-47", "ML-46", "ML-02")]
    [InlineData("ML-010", "ML-009")]
    [InlineData("ML-100", "ML-99")]
    [InlineData("8", "7")]
    [InlineData("b4 white", "b3 white")]
    [InlineData("S-2", "R-9", "S-1")]
    [InlineData("2026-10-31-2", "2026-10-31-1")]
    [InlineData(null)]
    [InlineData(null, "first")]
    [InlineData(null, "ML-46", "extra")]
    [InlineData(null, "2026-10-31")]
    [InlineData(null, "bake 20261031")]
    [InlineData(null, "1234567890123456")]
    public void Next_name_follows_the_last_in_the_journals_own_pattern(string? next, params string[] ids)
    {
        var series = new BakeIdSeries();
        foreach (var id in ids)
        {
            series.Add(id);
        }

        Assert.Equal(next, series.Next);
    }
}
