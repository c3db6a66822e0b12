using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json.Nodes;

namespace BakeInsights.Reports;

/// <summary>
/// Sliders as HTML: fits as data, and a script that works out the predictions from them. Without scripts the numbers of
/// the first place stand, and the sliders can't be moved.
/// </summary>
internal static class WhatIfHtml
{
    /// <summary>Wakes all sliders of the document that don't work yet.</summary>
    public static readonly string Script = OwnFile.Text("what-if.js");

    /// <summary>Writes the block.</summary>
    public static void Write(StringBuilder html, ViewWhatIf block)
    {
        // The default JSON encoder escapes <, > and &, so nothing in the data can end the script element.
        html.Append("<div class=\"bake-what-if\">\n");
        html.Append($"<script type=\"application/json\">{DataOf(block).ToJsonString()}</script>\n");
        foreach (var slider in block.Sliders)
        {
            Write(html, slider);
        }

        html.Append("<div aria-live=\"polite\" style=\"overflow-x:auto\"><table>\n");
        foreach (var model in block.Models)
        {
            html.Append($"<tr data-model=\"{model.Result.Name}\"><th scope=\"row\" style=\"text-align:left\">{Encode(model.Result.Title)}</th>");
            html.Append($"<td class=\"bake-estimate\" style=\"text-align:right;white-space:nowrap\">{Encode($"{Figures.Rounded(model.Unit.Value(model.AtStart.Estimate), model.Unit.Decimals)} {model.Unit.Label}")}</td>");
            html.Append($"<td class=\"bake-interval\" style=\"text-align:right;white-space:nowrap\">{Encode($"{IntervalOf(model.AtStart, model.Unit)} {model.Unit.Label}")}</td></tr>\n");
        }

        html.Append($"</table></div>\n</div>\n<script>{Script}</script>\n");
    }

    /// <summary>The interval of one more bake, without the unit.</summary>
    public static string IntervalOf(CurvePoint point, DisplayUnit unit) =>
        Figures.Range(unit.Value(point.Prediction.Low), unit.Value(point.Prediction.High), unit.Decimals);

    private static void Write(StringBuilder html, WhatIfSlider slider)
    {
        var unit = slider.Unit;
        html.Append("<div class=\"bake-slider\" style=\"margin:0.75em 0\">");
        html.Append($"<label><span style=\"display:inline-block;min-width:10em\">{Encode(slider.Setting.Title)}</span> ");
        html.Append("<input type=\"range\" disabled style=\"width:16em;max-width:70%;vertical-align:middle\" ");
        html.Append($"data-setting=\"{slider.Setting.Name}\" min=\"{Number(slider.Least)}\" max=\"{Number(slider.Most)}\" ");
        html.Append($"step=\"{Number(slider.Step)}\" value=\"{Number(slider.Start)}\" data-factor=\"{Number(unit.Factor)}\" ");
        html.Append($"data-offset=\"{Number(unit.Offset)}\" data-decimals=\"{Number(unit.Decimals)}\" data-unit=\"{Encode(unit.Label)}\"></label> ");
        html.Append($"<strong class=\"bake-set\" aria-hidden=\"true\" style=\"white-space:nowrap\">{Encode($"{Figures.Rounded(slider.Start, unit.Decimals)} {unit.Label}")}</strong></div>\n");
    }

    private static JsonObject DataOf(ViewWhatIf block) => new()
    {
        ["fixed"] = new JsonObject
        {
            [Measures.DoughTemperature.Name] = block.DoughTemperatureC,
            [Measures.Hydration.Name] = block.HydrationPct,
        },
        ["models"] = new JsonArray([.. block.Models.Select(DataOf)]),
    };

    private static JsonObject DataOf(WhatIfModel model) => new()
    {
        ["name"] = model.Result.Name,
        ["unit"] = new JsonObject
        {
            ["label"] = model.Unit.Label,
            ["factor"] = model.Unit.Factor,
            ["offset"] = model.Unit.Offset,
            ["decimals"] = model.Unit.Decimals,
        },
        ["centreTemperature"] = ModelAnswer.CentreTemperatureC,
        ["centreHydration"] = ModelAnswer.CentreHydrationPct,
        ["terms"] = new JsonArray(
        [
            .. model.Polynomial.Terms.Select(term => new JsonObject
            {
                ["ofTemperature"] = term.TemperaturePower,
                ["ofHydration"] = term.HydrationPower,
                ["coefficient"] = term.Coefficient,
            }),
        ]),
        ["covariance"] = new JsonArray(
            [.. model.Polynomial.Covariance.Select(row => new JsonArray([.. row.Select(value => JsonValue.Create(value))]))]),
        ["residualSd"] = model.Polynomial.ResidualSd,
        ["studentQuantile"] = model.Polynomial.StudentQuantile,
        ["isOfLogarithms"] = model.Polynomial.IsOfLogarithms,
    };

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static string Encode(string text) => HtmlEncoder.Default.Encode(text);
}
