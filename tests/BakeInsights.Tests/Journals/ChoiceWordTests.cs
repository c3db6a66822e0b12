using Xunit;

namespace BakeInsights.Tests;

/// <summary>The words of a column and the values of its enumeration: a bake finds one from the other by place.</summary>
public class ChoiceWordTests
{
    public static TheoryData<string, Type> Enumerations => new()
    {
        { BakeColumns.FlourMeasure.Name, typeof(FlourMeasure) },
        { BakeColumns.YeastKind.Name, typeof(YeastKind) },
        { BakeColumns.RiseOutcome.Name, typeof(RiseOutcome) },
        { BakeColumns.PressTest.Name, typeof(PressTest) },
    };

    [Theory]
    [MemberData(nameof(Enumerations))]
    public void Words_of_a_column_and_values_of_its_enumeration_stand_in_one_order(string name, Type enumeration)
    {
        var column = BakeColumns.All.OfType<ChoiceColumn>().Single(column => column.Name == name);

        Assert.Equal(column.Values.Select(Pascal), column.Values.Select((_, place) => Enum.GetName(enumeration, place)));
        Assert.Equal(column.Values.Count, Enum.GetNames(enumeration).Length);
    }

    [Fact]
    public void Every_column_of_words_but_steam_has_an_enumeration()
    {
        var others = BakeColumns.All.OfType<ChoiceColumn>().Select(column => column.Name)
            .Except(Enumerations.Select(row => (string)row[0]));

        Assert.Equal([BakeColumns.Steam.Name], others);
    }

    [Theory]
    [InlineData("weighed", FlourMeasure.Weighed, false)]
    [InlineData("spooned", FlourMeasure.Spooned, true)]
    [InlineData("scooped", FlourMeasure.Scooped, true)]
    [InlineData("SIFTED", FlourMeasure.Sifted, true)]
    [InlineData("cup_unknown", FlourMeasure.CupUnknown, true)]
    public void Word_of_a_cell_gives_the_value_of_the_bake(string word, FlourMeasure measure, bool byCup)
    {
        var bake = Csv.Bake("baked_on,flour_measure", $"2026-10-01,{word}");

        Assert.Equal((measure, byCup), (bake.FlourMeasure!.Value, bake.FlourByCup));
    }

    [Fact]
    public void Other_words_give_their_values_too()
    {
        var bake = Csv.Bake(
            "baked_on,yeast_kind,rise_outcome,press_test,steam", "2026-10-01,active_dry,stopped,keeps_dent,no");

        Assert.Equal(YeastKind.ActiveDry, bake.YeastKind);
        Assert.Equal(RiseOutcome.Stopped, bake.RiseOutcome);
        Assert.Equal(PressTest.KeepsDent, bake.PressTest);
        Assert.Equal("no", bake[BakeColumns.Steam]);
    }

    private static string Pascal(string word) =>
        string.Concat(word.Split('_').Select(part => char.ToUpperInvariant(part[0]) + part[1..]));
}
