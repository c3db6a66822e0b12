using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>
/// The same journal on machines set up for German (decimal comma), Turkish (dotless i) and Saudi Arabic (another
/// calendar): the same bakes, notices and files.
/// </summary>
public class CultureTests
{
    private static readonly string[] Lines =
    [
        "BAKE_ID,BAKED_ON,FLOUR_KIND,Flour_Cups,FLOUR_MEASURE,WATER_G,YEAST_G,YEAST_KIND,DOUGH_TEMP_F,MIXED_AT,RISE_H,PRESS_TEST,mine",
        "i,2026-10-01,İçel ı,4.25,SIFTED,1.5 CUPS,0.000015,INSTANT,76.5,9:59:45,1.75,SPRINGS_BACK,1.5",
        "I,2026-10-02,,4,SPOONED,325.5,2.25 TSP,ACTIVE_DRY,24.5 °c,19:40,95.5 MIN,KEEPS_DENT,",
        "k,2026-10-03,,4.5,,\"325,5\",1,wild,300.5,7.30,12000,bouncy,",
        "k,2026-10-04,,,,,,,,,,,",
        "l,01.10.2026,,,,,,,,,,,",
    ];

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Reading_and_writing_do_not_depend_on_the_culture(string culture)
    {
        var (bakes, notices, written) = InCulture.Run("", Work);
        var other = InCulture.Run(culture, Work);

        Assert.Equal(3, bakes);
        Assert.Equal(bakes, other.Bakes);
        Assert.Equal(notices, other.Notices);
        Assert.Equal(written, other.Written);
    }

    // The cultures differ at all on this machine: without their data this class would prove nothing.
    [Fact]
    public void Cultures_are_what_they_are_taken_for()
    {
        Assert.Equal("1,5", InCulture.Run("de-DE", () => $"{1.5}"));
        Assert.Equal("İ", InCulture.Run("tr-TR", () => "i".ToUpper()));
        Assert.NotEqual("2026", InCulture.Run("ar-SA", () => $"{new DateOnly(2026, 10, 1):yyyy}"));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void Months_and_messages_do_not_depend_on_the_culture(string culture)
    {
        string Message() => Assert.Throws<ArgumentOutOfRangeException>(
            () => new BakeDraft("a", new DateOnly(2026, 10, 1)).Set(BakeColumns.MixedAt, 1e9)).Message.Split(" (")[0];

        Assert.Equal(InCulture.Run("", Message), InCulture.Run(culture, Message));
        Assert.Equal(["2026-10"], InCulture.Run(culture, () => Csv.Read(Lines).Months));
    }

    private static (int Bakes, IReadOnlyList<Notice> Notices, string Written) Work()
    {
        var journal = Csv.Read(Lines);
        return (journal.Bakes.Count, journal.Notices, Csv.Canonical(journal.Bakes));
    }
}
