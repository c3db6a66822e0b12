using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class LoavesTests
{
    // "Lab report 5" (student laboratory): volume and mass of four breads and their specific volumes.
    [Theory]
    [InlineData(1900, 405.71, 4.683)]
    [InlineData(1810, 245.25, 7.380)]
    [InlineData(300, 47.79, 6.277)]
    [InlineData(140, 51.94, 2.695)]
    public void Specific_volume_is_as_published(double volume, double mass, double expected) =>
        Assert.Equal(expected, Loaves.SpecificVolume(volume, mass), 5e-4);

    // Worked by hand from the definitions: 500 g of dough, a cooled loaf of 445 g and 1900 mL.
    [Fact]
    public void Loaf_of_445_g_from_500_g_of_dough_lost_11_percent_and_has_4_270_mL_a_gram()
    {
        Assert.Equal(11.0, Loaves.BakeLossPct(500, 445), 1e-9);
        Assert.Equal(4.270, Loaves.SpecificVolume(1900, 445), 5e-4);
    }

    [Fact]
    public void Bake_loss_does_not_change_when_dough_and_loaves_are_scaled() =>
        Gen.Select(Gen.Double[1, 1e5], Gen.Double[0.5, 1], Gen.Double[0.01, 100]).Sample((dough, kept, scale) =>
            Math.Abs(Loaves.BakeLossPct(dough, kept * dough) - Loaves.BakeLossPct(scale * dough, scale * kept * dough)) < 1e-9);

    [Fact]
    public void Loaves_heavier_than_the_dough_show_as_a_negative_loss() =>
        Assert.Equal(-10, Loaves.BakeLossPct(500, 550), 1e-9);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Loaf_or_dough_without_mass_is_a_programming_error(double mass)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Loaves.SpecificVolume(1000, mass));
        Assert.Throws<ArgumentOutOfRangeException>(() => Loaves.BakeLossPct(mass, 400));
    }
}
