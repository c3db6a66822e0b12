using Xunit;

namespace BakeInsights.Tests;

public class QuantityTextTests
{
    [Theory]
    [InlineData("540", 540, null)]
    [InlineData(" 24.5 ", 24.5, null)]
    [InlineData("-3.5", -3.5, null)]
    [InlineData("+7", 7, null)]
    [InlineData(".5", 0.5, null)]
    [InlineData("5.", 5, null)]
    [InlineData("76F", 76, "°F")]
    [InlineData("76 °F", 76, "°F")]
    [InlineData("24°c", 24, "°C")]
    [InlineData("540 G", 540, "g")]
    [InlineData("1.5  hours", 1.5, "h")]
    [InlineData("19oz", 19, "oz")]
    [InlineData("2 cu in", 2, "cu in")]
    [InlineData("1.5E-05", 0.000015, null)]
    [InlineData("1e+3g", 1000, "g")]
    [InlineData("2e1 min", 20, "min")]
    public void Number_with_at_most_one_unit_is_read(string text, double value, string? unit)
    {
        Assert.True(QuantityText.TryParse(text, out var quantity));

        Assert.Equal(value, quantity.Value);
        Assert.Equal(unit, quantity.Unit?.Symbol);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("g")]
    [InlineData("24,5")]
    [InlineData("1,250")]
    [InlineData("1 250")]
    [InlineData("20-25")]
    [InlineData("1.2.3")]
    [InlineData("--5")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e999")]
    [InlineData("1e")]
    [InlineData("e5")]
    [InlineData("5 stone")]
    [InlineData("5 g g")]
    [InlineData("5 g 3")]
    [InlineData("about 5")]
    [InlineData("٢٤")]
    public void Anything_else_is_not_read(string text) => Assert.False(QuantityText.TryParse(text, out _));

    [Fact]
    public void Null_is_a_programming_error() =>
        Assert.Throws<ArgumentNullException>(() => QuantityText.TryParse(null!, out _));
}
