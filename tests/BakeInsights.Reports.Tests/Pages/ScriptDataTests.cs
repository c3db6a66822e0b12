using Xunit;

namespace BakeInsights.Reports.Tests;

public class ScriptDataTests
{
    [Fact]
    public void A_value_stands_there_as_json_that_nothing_in_it_can_end()
    {
        var html = ScriptData.Of("a \"name\"", new { Celsius = new[] { 22.1, 24 }, Note = "</script><b>&" }).ToHtml();
        Assert.Equal(
            """<script type="application/json" data-bake="a &quot;name&quot;">{"celsius":[22.1,24],"note":"\u003C/script\u003E\u003Cb\u003E\u0026"}</script>""",
            html);
    }

    [Fact]
    public void What_json_can_not_say_is_refused_by_name()
    {
        var error = Assert.Throws<ArgumentException>(() => ScriptData.Of("minutes", new[] { double.NaN }));
        Assert.StartsWith("minutes can't be handed over as JSON", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reader_of_plain_text_is_told_so() => Assert.Equal("Handed over to scripts: minutes", ScriptData.Of("minutes", null).ToText());
}
