using System.Globalization;
using BakeInsights.Reports;
using BakeInsights.TestKit;
using Microsoft.Playwright;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>The sliders of the month's page, against what the library says of the same doughs.</summary>
[Collection(InBrowser.Name)]
public class SliderTests(BrowserFixture browser)
{
    [Fact]
    public async Task Sliders_show_what_the_library_predicts()
    {
        await using var opened = await browser.OpenPageAsync(Notebooks.Month);
        await AssertSameAsTheLibraryAsync(opened.Page);
        opened.AssertQuietAndAlone();
    }

    [Fact]
    public async Task Sliders_show_it_in_us_units_too()
    {
        var target = browser.Folder.File("month-us.html");
        var run = await BakeCommand.RunAsync(browser.Folder.Path, "run", Repository.Path(Notebooks.Month), "--units", "us", "--to", target);
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        await using var opened = await browser.OpenAsync(target);
        await AssertSameAsTheLibraryAsync(opened.Page, UnitSystem.Us);
    }

    [Fact]
    public async Task The_line_by_eye_has_the_misses_that_the_library_works_out()
    {
        // The page's own chart says them for the same line, out of C#.
        await using var opened = await browser.OpenPageAsync("notebooks/class-temperature.ipynb");
        var said = $"Largest miss {await opened.Page.Locator("#eye-miss").InnerTextAsync()} min, sum of squared misses {await opened.Page.Locator("#eye-sum").InnerTextAsync()}";
        await Assertions.Expect(opened.Page.Locator("figcaption", new() { HasText = said })).ToHaveCountAsync(1);
        var before = await opened.Page.Locator("#eye-sum").InnerTextAsync();
        await opened.Page.Locator("#eye-slope").FocusAsync();
        await opened.Page.Keyboard.PressAsync("ArrowLeft");
        await Assertions.Expect(opened.Page.Locator("#eye-sum")).Not.ToHaveTextAsync(before);
        await Assertions.Expect(opened.Page.Locator("#eye-slope-says")).ToHaveTextAsync("-5.1");
        opened.AssertQuietAndAlone();
    }

    [Fact]
    public async Task Sliders_move_by_the_keyboard_and_say_where_they_stand()
    {
        await using var opened = await browser.OpenPageAsync(Notebooks.Month);
        var slider = opened.Page.Locator(".bake-what-if input").First;
        await slider.FocusAsync();
        await opened.Page.Keyboard.PressAsync("Home");
        var least = await slider.GetAttributeAsync("aria-valuetext");
        await opened.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal("19.5 °C", least);
        Assert.Equal("20.0 °C", await slider.GetAttributeAsync("aria-valuetext"));
    }

    /// <summary>Moves the sliders over their whole grid and compares each number shown.</summary>
    internal static async Task AssertSameAsTheLibraryAsync(IPage page, UnitSystem units = UnitSystem.Metric)
    {
        var log = Journal.Read(Repository.Path("data-demo/millpond-lane"));
        var bakes = log.BakesOfMonth("");
        var (rise, volume) = (RiseTime.Ask(bakes).Value, LoafVolume.Ask(bakes).Value);
        var sliders = WhatIfView.Of(rise, volume, units).Blocks.OfType<ViewWhatIf>().Single().Sliders;
        var (temperatures, hydrations) = (Places(sliders[0]), Places(sliders[1]));
        Assert.True(temperatures.Length >= 10 && hydrations.Length >= 10);
        var shown = await page.EvaluateAsync<string[]>(
            """
            places => {
              const box = document.querySelector('.bake-what-if');
              const [temperature, hydration] = box.querySelectorAll('input');
              const move = (slider, value) => { slider.value = value; slider.dispatchEvent(new Event('input', { bubbles: true })); };
              return places.temperatures.flatMap(t => places.hydrations.map(h => {
                move(temperature, t);
                move(hydration, h);
                return [...box.querySelectorAll('td')].map(cell => cell.textContent).join(' | ');
              }));
            }
            """,
            new { temperatures, hydrations });
        var expected =
            from t in temperatures
            from h in hydrations
            let settings = (Celsius: sliders[0].Canonical(t), Percent: sliders[1].Canonical(h))
            select Words(rise.At(With(rise.Typical, settings)), DisplayUnit.For(Dimension.Duration, units)) + " | "
                + Words(volume.At(With(volume.Typical, settings)), DisplayUnit.For(Dimension.SpecificVolume, units));
        Assert.Equal(expected, shown);
    }

    private static double[] Places(WhatIfSlider slider) =>
        [.. Enumerable.Range(0, (int)Math.Round((slider.Most - slider.Least) / slider.Step) + 1).Select(i => slider.Least + (i * slider.Step))];

    private static DoughSettings With(DoughSettings typical, (double Celsius, double Percent) settings) =>
        typical.With(Measures.DoughTemperature, settings.Celsius).With(Measures.Hydration, settings.Percent);

    private static string Words(CurvePoint point, DisplayUnit unit) =>
        $"{Number(point.Estimate, unit)} {unit.Label} | {Number(point.Prediction.Low, unit)} to {Number(point.Prediction.High, unit)} {unit.Label}";

    private static string Number(double canonical, DisplayUnit unit) => Math.Round(unit.Value(canonical), unit.Decimals, MidpointRounding.AwayFromZero)
        .ToString("F" + unit.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).Replace('-', '−');
}
