using System.Text.Json;
using System.Text.Json.Nodes;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

[Collection(nameof(Command))]
public sealed class FitCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_text_has_the_journal_and_both_answers_in_the_units_asked_for()
    {
        var metric = Command.Run("fit", Command.Demo);
        var us = Command.Run("fit", Command.Demo, "--units", "us");
        Assert.Equal((1, ""), (metric.Status, metric.Error));
        Assert.Equal((1, ""), (us.Status, us.Error));
        Assert.Equal(metric, Command.Run("fit", Command.Demo, "--units", "metric"));
        Assert.Contains("A dough 1 °C warmer was ready about 9 min sooner", metric.Out, StringComparison.Ordinal);
        Assert.Contains("A dough 1 °F warmer was ready about 5 min sooner", us.Out, StringComparison.Ordinal);
        Assert.All([metric.Out, us.Out], text => Assert.Contains("Loaves were largest at about 69.7 % hydration", text, StringComparison.Ordinal));
        Assert.All((metric.Out + us.Out).Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void A_journal_without_slips_is_fitted_with_status_0()
    {
        var clean = _folder.File("clean.csv");
        Command.Run("check", Command.Demo, "--to", clean);
        var fit = Command.Run("fit", clean);
        Assert.Equal((0, ""), (fit.Status, fit.Error));

        // Nothing but the journal's own lines depends on the slip.
        Assert.Equal(Answers(Command.Run("fit", Command.Demo)), Answers(fit));
    }

    [Fact]
    public void JSON_keeps_the_contract()
    {
        var fit = Command.Run("fit", Command.Demo, "--json");
        Assert.Equal((1, ""), (fit.Status, fit.Error));
        Shape.Is(
            fit.Json,
            ("journal", JsonValueKind.Object),
            ("rise_time", JsonValueKind.Object),
            ("loaf_volume", JsonValueKind.Object),
            ("problems", JsonValueKind.Array));
        Shape.IsJournal(fit.Json["journal"]);
        Assert.Empty(fit.Json["problems"]!.AsArray());

        var rise = fit.Json["rise_time"]!;
        Shape.Is(
            rise,
            ("used", JsonValueKind.Number),
            ("left_out", JsonValueKind.Array),
            ("model", JsonValueKind.String),
            ("centre", JsonValueKind.Object),
            ("terms", JsonValueKind.Array),
            ("residual_sd", JsonValueKind.Number),
            ("q10", JsonValueKind.Object),
            ("checks", JsonValueKind.Array),
            ("caveats", JsonValueKind.Array));
        IsEstimate(rise["q10"], JsonValueKind.Number);
        Assert.Equal(["intercept", "dough_temperature", "log_yeast", "hydration", "salt"], Names(rise));

        var volume = fit.Json["loaf_volume"]!;
        Shape.Is(
            volume,
            ("used", JsonValueKind.Number),
            ("left_out", JsonValueKind.Array),
            ("model", JsonValueKind.String),
            ("centre", JsonValueKind.Object),
            ("terms", JsonValueKind.Array),
            ("residual_sd", JsonValueKind.Number),
            ("r_squared", JsonValueKind.Number),
            ("optimum", JsonValueKind.Object),
            ("checks", JsonValueKind.Array),
            ("caveats", JsonValueKind.Array));
        Shape.Is(volume["optimum"], "hydration_pct", JsonValueKind.Object);
        IsEstimate(volume["optimum"]!["hydration_pct"], JsonValueKind.Number);
        Assert.Equal(
            ["intercept", "hydration", "dough_temperature", "hydration_squared", "dough_temperature_squared", "hydration_x_dough_temperature"],
            Names(volume));
        Assert.All([rise, volume], HasTheCommonParts);
    }

    [Fact]
    public void JSON_stays_metric_and_is_the_same_bytes_in_every_culture()
    {
        var usual = Command.RunUnder("en-US", "fit", Command.Demo, "--json");
        Assert.Equal(usual, Command.Run("fit", Command.Demo, "--json", "--units", "us"));
        foreach (var culture in new[] { "de-DE", "tr-TR" })
        {
            Assert.Equal(usual, Command.RunUnder(culture, "fit", Command.Demo, "--json"));
            Assert.Equal(
                Command.RunUnder("en-US", "fit", Command.Demo, "--units", "us"), Command.RunUnder(culture, "fit", Command.Demo, "--units", "us"));
        }
    }

    [Fact]
    public void A_best_hydration_without_ends_has_null_for_each()
    {
        // A bend that this few, this scattered loaves can't tell from none.
        (int Hydration, double Volume)[] loaves =
            [(60, 3500), (62, 3900), (64, 3300), (66, 4000), (68, 3400), (70, 3800), (72, 3350), (74, 3700)];
        var rows = loaves.Select((loaf, i) => $"L{i},2026-10-01,1000,{loaf.Hydration}0,800,{loaf.Volume}");
        var journal = _folder.Write("bakes.csv", string.Join('\n', rows.Prepend("bake_id,baked_on,flour_g,water_g,loaf_g,loaf_volume_ml")) + "\n");
        var fit = Command.Run("fit", journal, "--json");
        Assert.Equal(0, fit.Status);
        IsEstimate(fit.Json["loaf_volume"]!["optimum"]!["hydration_pct"], JsonValueKind.Null);
        var text = Command.Run("fit", journal).Out.ReplaceLineEndings(" ");
        Assert.Contains("(95 % interval: no bounds)", text, StringComparison.Ordinal);
        Assert.Contains("Hydration accounts for", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_one_model_lacks_is_null_beside_a_problem_and_the_other_is_still_answered()
    {
        var journal = _folder.File("no-rise.csv");
        File.WriteAllText(
            journal, File.ReadAllText(Path.Combine(Command.Demo, "bakes.csv")).Replace("rise_min", "own", StringComparison.Ordinal));
        var fit = Command.Run("fit", journal, "--json");
        Assert.Equal((1, ""), (fit.Status, fit.Error));
        Assert.Null(fit.Json["rise_time"]);
        Assert.NotNull(fit.Json["loaf_volume"]);
        var problem = Assert.Single(fit.Json["problems"]!.AsArray())!;
        Shape.Is(
            problem,
            ("model", JsonValueKind.String),
            ("column", JsonValueKind.String),
            ("message", JsonValueKind.String),
            ("remedy", JsonValueKind.String));
        Assert.Equal("rise_time", (string?)problem["model"]);
        Assert.Equal("No bake has a rise time that can be used.", (string?)problem["message"]);
    }

    [Fact]
    public void A_journal_that_supports_neither_fit_ends_with_status_2_and_one_line()
    {
        var journal = _folder.Write("bakes.csv", "bake_id,baked_on\nA,2026-10-01\n");
        var line = $"{journal} supports neither fit: No bake has a rise time that can be used. Log the rise time of each bake." + Environment.NewLine;
        var json = Command.Run("fit", journal, "--json");
        Assert.Equal((2, line), (json.Status, json.Error));
        Assert.Equal(["rise_time", "loaf_volume"], json.Json["problems"]!.AsArray().Select(problem => (string)problem!["model"]!));
        Assert.Equal((2, line), (Command.Run("fit", journal).Status, Command.Run("fit", journal).Error));
    }

    private static void HasTheCommonParts(JsonNode? answer)
    {
        Shape.Is(answer!["centre"], ("dough_temp_c", JsonValueKind.Number), ("hydration_pct", JsonValueKind.Number));
        Assert.All(answer["terms"]!.AsArray(), term => Shape.Is(
            term,
            ("name", JsonValueKind.String),
            ("unit", JsonValueKind.String),
            ("estimate", JsonValueKind.Number),
            ("standard_error", JsonValueKind.Number),
            ("low", JsonValueKind.Number),
            ("high", JsonValueKind.Number),
            ("p", JsonValueKind.Number)));
        Assert.All(answer["checks"]!.AsArray(), check => Shape.Is(
            check,
            ("name", JsonValueKind.String),
            ("value", JsonValueKind.Number),
            ("passed", (bool)check!["passed"]! ? JsonValueKind.True : JsonValueKind.False),
            ("statement", JsonValueKind.String)));
        Assert.All(answer["caveats"]!.AsArray(), caveat => Assert.Equal(JsonValueKind.String, caveat!.GetValueKind()));
        Assert.NotEmpty(answer["left_out"]!.AsArray());
        Assert.All(answer["left_out"]!.AsArray(), left =>
        {
            var isTerm = (string?)left!["kind"] == "term";
            Shape.Is(
                left,
                ("kind", JsonValueKind.String),
                ("reason", JsonValueKind.String),
                ("count", isTerm ? JsonValueKind.Null : JsonValueKind.Number),
                ("term", isTerm ? JsonValueKind.String : JsonValueKind.Null),
                ("bakes", isTerm ? JsonValueKind.Null : JsonValueKind.Array));
        });
    }

    private static string Answers(Command fit) => fit.Out[fit.Out.IndexOf("\nRise time\n", StringComparison.Ordinal)..];

    private static void IsEstimate(JsonNode? estimate, JsonValueKind ends) =>
        Shape.Is(estimate, ("estimate", JsonValueKind.Number), ("low", ends), ("high", ends));

    private static IEnumerable<string> Names(JsonNode answer) => answer["terms"]!.AsArray().Select(term => (string)term!["name"]!);
}
