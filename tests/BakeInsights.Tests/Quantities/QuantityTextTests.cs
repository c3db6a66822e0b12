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
    [InlineData("24,5", 24.5, null)]
    [InlineData("24,5 °C", 24.5, "°C")]
    [InlineData("0,75", 0.75, null)]
    [InlineData("0,750", 0.75, null)]
    [InlineData(",5", 0.5, null)]
    [InlineData("1,2345", 1.2345, null)]
    [InlineData("1234,567", 1234.567, null)]
    [InlineData("1,250.5", 1250.5, null)]
    [InlineData("1.250,5", 1250.5, null)]
    [InlineData("1,250,000 g", 1_250_000, "g")]
    [InlineData("1.250.000", 1_250_000, null)]
    [InlineData("1.250", 1.25, null)]
    [InlineData("\u22123.5", -3.5, null)]
    [InlineData("76\u00A0°F", 76, "°F")]
    [InlineData("540\u2009g", 540, "g")]
    [InlineData("540\u202Fg", 540, "g")]
    [InlineData("\u3000540\u3000g", 540, "g")]
    [InlineData("76 ° F", 76, "°F")]
    [InlineData("76º F", 76, "°F")]
    [InlineData("24 ℃", 24, "°C")]
    [InlineData("19 oz.", 19, "oz")]
    [InlineData("68 %", 68, "%")]
    [InlineData("68%", 68, "%")]
    [InlineData("½", 0.5, null)]
    [InlineData("1/2", 0.5, null)]
    [InlineData("1\u20442", 0.5, null)]
    [InlineData("2¼", 2.25, null)]
    [InlineData("2 ¼ tsp", 2.25, "tsp")]
    [InlineData("3 1/2 cups", 3.5, "cup")]
    [InlineData("3½cups", 3.5, "cup")]
    [InlineData("-1/2", -0.5, null)]
    [InlineData("-½", -0.5, null)]
    [InlineData("3/10 g", 0.3, "g")]
    [InlineData("⅞ oz", 0.875, "oz")]
    [InlineData("2 in³", 2, "cu in")]
    [InlineData("9.5 cm", 9.5, "cm")]
    [InlineData("1:15", 75, "min")]
    [InlineData("01:15", 75, "min")]
    [InlineData("36:00", 2160, "min")]
    [InlineData("1:15:30", 75.5, "min")]
    [InlineData("1 h 15 min", 75, "min")]
    [InlineData("1h15min", 75, "min")]
    [InlineData("1 h 20", 80, "min")]
    [InlineData("1h20", 80, "min")]
    [InlineData("1.25 h", 1.25, "h")]
    [InlineData("1 1/4 h", 1.25, "h")]
    [InlineData("1 kg 200 g", 1200, "g")]
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
    [InlineData("1,250")]
    [InlineData("1,250 g")]
    [InlineData("1,25,000")]
    [InlineData("1,250.5.5")]
    [InlineData("1.2,3.4")]
    [InlineData(",")]
    [InlineData("1/0")]
    [InlineData("1/2/3")]
    [InlineData("10/31/2026")]
    [InlineData("1.5 1/2")]
    [InlineData("1.5/2")]
    [InlineData("1/2 1/2")]
    [InlineData("1:5")]
    [InlineData("1:75")]
    [InlineData(":15")]
    [InlineData("1:15 h")]
    [InlineData("3 oz 1 lb")]
    [InlineData("1 lb 20 min")]
    [InlineData("1 lb 3")]
    [InlineData("20 °C 5 °C")]
    [InlineData("1 h 20 min 3")]
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

    // Pound and ounce: NIST Handbook 44, Appendix C.
    [Theory]
    [InlineData("1 lb 3 oz")]
    [InlineData("1lb3oz")]
    [InlineData("1 LB. 3 OZ.")]
    public void Pounds_and_ounces_are_given_in_grams(string text)
    {
        Assert.True(QuantityText.TryParse(text, out var quantity));

        Assert.Equal("g", quantity.Unit?.Symbol);
        Assert.Equal(453.59237 + (3 * 28.349523), quantity.Value, 2e-6);
    }

    [Theory]
    [InlineData("1,250", DecimalMark.Comma, 1.25)]
    [InlineData("1,250", DecimalMark.Point, 1250)]
    [InlineData("1.250", DecimalMark.Comma, 1250)]
    [InlineData("1.250", DecimalMark.Point, 1.25)]
    [InlineData("24.5", DecimalMark.Comma, 24.5)]
    [InlineData("24,5", DecimalMark.Point, 24.5)]
    public void Decimal_mark_of_the_file_decides_what_could_be_either(string text, DecimalMark mark, double value)
    {
        Assert.True(QuantityText.TryParse(text, mark, out var quantity));

        Assert.Equal(value, quantity.Value);
    }

    [Theory]
    [InlineData("1,250")]
    [InlineData("1.250 kg")]
    public void Where_a_file_has_both_marks_what_could_be_either_is_not_read(string text) =>
        Assert.False(QuantityText.TryParse(text, DecimalMark.Both, out _));

    [Theory]
    [InlineData("24,5 °C", DecimalMark.Comma)]
    [InlineData("-0,5", DecimalMark.Comma)]
    [InlineData("1.250,5", DecimalMark.Comma)]
    [InlineData("24.5", DecimalMark.Point)]
    [InlineData("1,250,000", DecimalMark.Point)]
    [InlineData("1,250", DecimalMark.NotShown)]
    [InlineData("1.250", DecimalMark.NotShown)]
    [InlineData("24", DecimalMark.NotShown)]
    [InlineData("3,5 stone", DecimalMark.NotShown)]
    [InlineData("see page 3,5", DecimalMark.NotShown)]
    public void Text_shows_the_decimal_mark_that_it_can_only_have(string text, DecimalMark shown) =>
        Assert.Equal(shown, QuantityText.Shown(text));
}
