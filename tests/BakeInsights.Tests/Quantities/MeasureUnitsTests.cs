using Xunit;

namespace BakeInsights.Tests;

public class MeasureUnitsTests
{
    public static TheoryData<string, string> Spellings
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var (unit, text) in MeasureUnits.All.SelectMany(unit => unit.Spellings.Distinct().Select(text => (unit, text))))
            {
                data.Add(unit.Symbol, text);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Spellings))]
    public void Every_spelling_finds_its_unit_in_either_case(string symbol, string spelling)
    {
        Assert.Equal(symbol, MeasureUnits.WithText(spelling)?.Symbol);
        Assert.Equal(symbol, MeasureUnits.WithText(spelling.ToUpperInvariant())?.Symbol);
        Assert.Equal(symbol, MeasureUnits.WithText(spelling.ToLowerInvariant())?.Symbol);
    }

    [Fact]
    public void Header_endings_are_lower_case_and_find_their_unit() => Assert.All(MeasureUnits.All, unit =>
    {
        Assert.Equal(unit.HeaderSuffix.ToLowerInvariant(), unit.HeaderSuffix);
        Assert.Same(unit, MeasureUnits.WithHeaderSuffix(unit.HeaderSuffix));
    });

    [Theory]
    [InlineData(Dimension.Mass, "g")]
    [InlineData(Dimension.Volume, "mL")]
    [InlineData(Dimension.Temperature, "°C")]
    [InlineData(Dimension.Duration, "min")]
    [InlineData(Dimension.Percent, "%")]
    [InlineData(Dimension.Length, "mm")]
    public void Canonical_unit_of_a_dimension_keeps_the_number(Dimension dimension, string symbol)
    {
        var unit = MeasureUnits.Canonical(dimension);

        Assert.Equal(symbol, unit?.Symbol);
        Assert.Equal(17.25, unit!.ToCanonical(17.25));
    }

    [Theory]
    [InlineData(Dimension.Number)]
    [InlineData(Dimension.TimeOfDay)]
    public void Number_and_time_of_day_have_no_unit(Dimension dimension) => Assert.Null(MeasureUnits.Canonical(dimension));

    [Theory]
    [InlineData("")]
    [InlineData("stone")]
    [InlineData("flour")]
    public void Text_that_is_no_unit_finds_none(string text) => Assert.Null(MeasureUnits.WithText(text));
}
