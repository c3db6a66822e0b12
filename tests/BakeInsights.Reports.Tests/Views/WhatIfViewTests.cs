using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class WhatIfViewTests
{
    private static readonly View Metric = WhatIfView.Of(Demo.RiseTime.Value, Demo.LoafVolume.Value, UnitSystem.Metric);

    [Fact]
    public void Sliders_stay_within_what_both_fits_have_seen()
    {
        var sliders = Assert.IsType<ViewWhatIf>(Metric.Blocks[2]).Sliders;
        Assert.Equal([Measures.DoughTemperature, Measures.Hydration], sliders.Select(slider => slider.Setting));
        Assert.All(sliders, slider =>
        {
            var ranges = new ModelAnswer[] { Demo.RiseTime.Value, Demo.LoafVolume.Value }.Select(answer => answer.RangeOf(slider.Setting)!).ToList();
            Assert.InRange(slider.Canonical(slider.Least), ranges.Max(range => range.Least), ranges.Max(range => range.Least) + 0.5);
            Assert.InRange(slider.Canonical(slider.Most), ranges.Min(range => range.Most) - 0.5, ranges.Min(range => range.Most));
            Assert.InRange(slider.Start, slider.Least, slider.Most);
        });
    }

    [Fact]
    public void The_first_numbers_are_the_answers_own()
    {
        var html = Metric.ToHtml();
        var block = Assert.IsType<ViewWhatIf>(Metric.Blocks[2]);
        var rise = Demo.RiseTime.Value.At(Demo.RiseTime.Value.Typical
            .With(Measures.DoughTemperature, block.Sliders[0].Start).With(Measures.Hydration, block.Sliders[1].Start));
        Assert.Contains($">{Figures.Rounded(rise.Estimate, 0)} min</td>", html, StringComparison.Ordinal);
        Assert.Contains($">{Figures.Range(rise.Prediction.Low, rise.Prediction.High, 0)} min</td>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void In_us_units_the_sliders_step_by_whole_degrees_of_their_scale()
    {
        var view = WhatIfView.Of(Demo.RiseTime.Value, Demo.LoafVolume.Value, UnitSystem.Us);
        var slider = Assert.IsType<ViewWhatIf>(view.Blocks[2]).Sliders[0];
        Assert.Equal((1, 0), (slider.Step, slider.Least % 1));
        Assert.Equal(slider.Unit.Value(slider.Canonical(slider.Start)), slider.Start, 1e-9);
        Assert.Contains("data-unit=\"&#xB0;F\"", view.ToHtml(), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_page_the_numbers_stand_in_a_table()
    {
        var text = Metric.ToText();
        Assert.Contains("What if the dough were warmer, or wetter?", text, StringComparison.Ordinal);
        Assert.Equal(9, Assert.IsType<ViewTable>(Metric.Blocks[3]).Rows.Count);
        Assert.DoesNotContain('<', text);
    }

    [Fact]
    public void The_data_handed_over_is_the_fit_to_the_last_digit()
    {
        var data = JsonNode.Parse(Regex.Match(Metric.ToHtml(), "<script type=\"application/json\">(.*?)</script>").Groups[1].Value)!;
        var polynomial = AnswerPolynomial.Of(Demo.LoafVolume.Value);
        Assert.Equal(polynomial.Terms.Select(term => term.Coefficient), data["models"]![1]!["terms"]!.AsArray().Select(term => (double)term!["coefficient"]!));
        Assert.Equal(polynomial.StudentQuantile, (double)data["models"]![1]!["studentQuantile"]!);
        Assert.Equal(polynomial.Covariance[2][3], (double)data["models"]![1]!["covariance"]![2]![3]!);
    }

    [Fact]
    public void A_setting_that_no_fit_knows_has_no_slider()
    {
        // Twelve bakes at one hydration; times and volumes follow the temperature but for a little.
        var journal = Demo.Read(Enumerable.Range(0, 12)
            .Select(i => FormattableString.Invariant($"A{i},2026-10-{i + 1:00},1000,650,20,10,{20 + (i % 6)},{150 - (6 * (i % 6)) + (i % 5)},{400 + i},{1500 + (20 * (i % 6)) + (9 * (i % 4))}"))
            .Prepend("bake_id,baked_on,flour_g,water_g,salt_g,yeast_g,dough_temp_c,rise_min,loaf_g,loaf_volume_ml"));
        var view = WhatIfView.Of(BakeInsights.RiseTime.Ask(journal.Bakes).Value, BakeInsights.LoafVolume.Ask(journal.Bakes).Value, UnitSystem.Metric);
        var block = Assert.Single(view.Blocks.OfType<ViewWhatIf>());
        Assert.Equal(Measures.DoughTemperature, Assert.Single(block.Sliders).Setting);
        Assert.Equal(65, block.HydrationPct);
        Assert.Equal(3, Assert.IsType<ViewTable>(view.Blocks[3]).Rows.Count);
    }
}
