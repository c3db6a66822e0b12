using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

[Collection(nameof(Command))]
public sealed class SheetCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string[], string> Impossible => new()
    {
        { ["--finish-by", "noonish"], "--finish-by noonish is no time of day: write it as 13:00 or 1:00 pm." },
        { ["--start", "9:00", "--finish-by", "8:00"], "A day that starts at 9:00 can't be over by 8:00. Give a finish after the start, or leave one of the two away: the other then follows." },
        {
            ["--start", "9:00", "--finish-by", "10:00"],
            "From 9:00 to 10:00 are 60 min, and the day takes up to 202 min without any first rise, 315 min with it. Finish by 14:15 or later, or start at 4:45 or earlier."
        },
        { ["--formula", "baguette"], "There is no formula baguette in millpond-lane. Say lane loaf, or leave --formula away for the journal's typical dough." },
        { ["--loaves", "0"], "A dough can't be divided into 0 loaves. Ask for 1 to 1000." },
        { ["--loaves", "two"], "--loaves two is no whole number: write it as 4." },
        { ["--piece-g", "0"], "A piece can't weigh 0 g. Give more than 0 and at most 10000 g." },
        { ["--piece-g", "large"], "--piece-g large is no number of grams: write it as 800." },
        { ["--kitchen", "90C"], "A room of 90.0 °C is none to bake in. Give -10.0 °C to 50.0 °C." },
        { ["--kitchen", "warm"], "--kitchen warm is no temperature: write it as 21C or 70F." },
        { ["--flour-temp", "60C"], "A flour of 60.0 °C is none to bake with. Give -20.0 °C to 45.0 °C." },
        { ["--taps", "50C,15C"], "Taps of 50.0 °C and 15.0 °C can't be. Give the cold one first: from 0.0 °C, and the hot one up to 100.0 °C." },
        { ["--taps", "15C,120C"], "Taps of 15.0 °C and 120.0 °C can't be. Give the cold one first: from 0.0 °C, and the hot one up to 100.0 °C." },
        { ["--taps", "15C"], "--taps 15C are not two temperatures: write the cold one first, as 12C,55C." },
        { ["--ice", "-1"], "There can't be -1 g of ice. Give 0 for none." },
        { ["--cups", "heaped"], "Cups are not filled heaped: say spooned, scooped or sifted." },
        { ["--paper", "a5"], "There is no paper a5: say a4 or letter." },
        { ["--bake", "A: dough_temp=140F"], "A: A dough of 60.0 °C is none. Give 0.0 °C to 50.0 °C." },
        { ["--bake", "A: salt=200"], "A: A salt of 200 % of the flour can't be. Give 0 to 150 %." },
        { ["--bake", "A: crust=2"], "--bake A: crust=2 has no setting crust: there are dough_temp, hydration, yeast, salt, sugar." },
        { ["--bake", "A: salt=much"], "--bake A: salt=much: much is no percentage of flour: write it as salt=2." },
        {
            ["--kitchen", "0C", "--bake", "dough_temp=50C"],
            "A dough of 50.0 °C would take water of 132.0 °C, above boiling. Water of 45.0 °C, the warmest for yeast, brings it to 18.2 °C: ask for that or less, or warm room and flour."
        },
        {
            ["--cups", "sifted", "--loaves", "40", "--piece-g", "500"],
            "12018 g of flour are too much to measure by the cup. Weigh it: leave --cups away, or ask for less than 10000 g."
        },
        { ["--to", "sheet.pdf"], "sheet.pdf can't be written: give a name that ends in .html." },
        { ["--to", "nowhere/sheet.html"], $"There is no folder {Path.GetFullPath("nowhere")}: make it, or give another name with --to." },
    };

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Impossible))]
    public void Impossible_wish_is_refused_with_what_is_possible(string[] wish, string line) =>
        Command.Run(["sheet", Command.Demo, .. wish]).Refuses(line);

    [Fact]
    public void Sheet_is_printed_as_text_without_a_file() => Approved.Matches(
        "tests/BakeInsights.Cli.Tests/Approved/sheet-us.txt",
        Command.Run("sheet", Command.Demo, "--units", "us", "--cups", "spooned", "--start", "9:00", "--finish-by", "14:00", "--loaves", "3", "--piece-g", "700").Out);

    [Fact]
    public void Document_holds_all_that_the_sheet_says()
    {
        var sheet = Command.Run("sheet", Command.Demo, "--json", "--units", "us", "--start", "9:00", "--finish-by", "14:00", "--cups", "sifted").Json["sheets"]![0]!;
        Assert.Equal(
            [
                "name", "journal", "formula", "dough_temp_c", "water", "water_problem", "rise", "proof", "looks_min", "rise_change_pct_per_c", "day", "blanks", "cautions",
            ],
            sheet.AsObject().Select(member => member.Key));
        Assert.Equal("sifted", sheet["formula"]!["cups"]!.GetValue<string>());
        Assert.Equal(1000, sheet["formula"]!["lines"]![0]!["g"]!.GetValue<double>(), 1e-6);
        Assert.False(sheet["day"]!["fit"]!["fits"]!.GetValue<bool>());
        Assert.True(sheet["day"]!["fit"]!["yeast_g"]!.GetValue<double>() > 10);
        Assert.Equal(540, sheet["day"]!["start_min"]!.GetValue<double>());
    }

    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    public void Blanks_of_a_sheet_type_straight_into_add(string units)
    {
        File.Copy(Path.Combine(Command.Demo, "bakes.csv"), _folder.File("bakes.csv"));
        var sheet = Command.Run("sheet", _folder.Path, "--json", "--units", units);
        Assert.Equal((0, ""), (sheet.Status, sheet.Error));
        var blanks = sheet.Json["sheets"]![0]!["blanks"]!.AsArray();
        var header = File.ReadLines(_folder.File("bakes.csv")).First().Split(',');
        Assert.Equal(header, blanks.Select(blank => blank!["name"]!.GetValue<string>()).Select(name =>
            header.Contains(name) ? name : name + "_c"));

        var typed = blanks.SelectMany(blank => new[] { "--set", $"{blank!["name"]!.GetValue<string>()}={Written(blank!["name"]!.GetValue<string>(), units)}" }).ToArray();
        var added = Command.Run(["add", _folder.Path, "--units", units, .. typed]);
        Assert.Equal((0, ""), (added.Status, added.Error));
        var bake = Journal.Read(_folder.Path).Bakes[^1];
        Assert.Equal(25, bake[BakeColumns.DoughTemp]!.Value, 0.01);
        Assert.Equal((1000, 95, 730), (bake[BakeColumns.Flour], bake[BakeColumns.Rise], bake[BakeColumns.Loaf]));
        Assert.Equal("ready", bake[BakeColumns.RiseOutcome]);
    }

    [Fact]
    public void Blanks_of_a_journal_in_words_and_other_units_type_into_add_too()
    {
        var journal = _folder.Write("bakes.csv", "Date,Flour (oz),Water (oz),Final dough temp (°F),Bulk (h),mill lot\n2026-10-05,35,23,76,1.6,A7\n");
        var blanks = Command.Run("sheet", journal, "--json").Json["sheets"]![0]!["blanks"]!.AsArray();
        Assert.Equal(["Date", "Flour (oz)", "Water (oz)", "dough_temp", "Bulk (h)", "mill lot"], blanks.Select(blank => blank!["name"]!.GetValue<string>()));
        Assert.Equal(["", "oz", "oz", "°C", "h", ""], blanks.Select(blank => blank!["unit"]!.GetValue<string>()));
        string[] values = ["2026-10-06", "36", "24", "25", "1.5", "B2"];
        var added = Command.Run(["add", journal, "--units", "metric", .. blanks.Zip(values).SelectMany(pair => new[] { "--set", $"{pair.First!["name"]!.GetValue<string>()}={pair.Second}" })]);
        Assert.Equal((0, ""), (added.Status, added.Error));
        var bake = Journal.Read(journal).Bakes[^1];
        Assert.Equal(25, bake[BakeColumns.DoughTemp]!.Value, 0.01);
        Assert.Equal(90, bake[BakeColumns.Rise]);
    }

    [Fact]
    public void Starter_journal_has_blanks_in_its_headers_order_before_its_first_bake()
    {
        var journal = _folder.File("mine");
        Command.Run("new", journal);
        File.WriteAllText(Path.Combine(journal, "formulas.csv"), "formula,ingredient,percent\nhouse,water,65\nhouse,salt,2\nhouse,instant yeast,1\n");
        var sheet = Command.Run("sheet", journal, "--formula", "house", "--json", "--start", "9:00");
        Assert.Equal((0, ""), (sheet.Status, sheet.Error));
        Assert.Equal(
            File.ReadAllText(Path.Combine(journal, "bakes.csv")).TrimEnd('\n').Split(','),
            sheet.Json["sheets"]![0]!["blanks"]!.AsArray().Select(blank => blank!["name"]!.GetValue<string>()));
        Assert.Contains("The times are common practice, not this kitchen's.", sheet.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_is_written_and_the_journal_is_not()
    {
        File.Copy(Path.Combine(Command.Demo, "bakes.csv"), _folder.File("bakes.html"));
        var before = File.ReadAllBytes(_folder.File("bakes.html"));
        var page = _folder.File("sheet.html");
        Assert.Equal((0, page + "\n", ""), Outcome(Command.Run("sheet", _folder.File("bakes.html"), "--to", page)));
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(page), StringComparison.Ordinal);
        Command.Run("sheet", _folder.File("bakes.html"), "--to", _folder.File("bakes.html"))
            .Refuses($"{_folder.File("bakes.html")} is the journal itself: give another name with --to.");
        Assert.Equal(before, File.ReadAllBytes(_folder.File("bakes.html")));
        Assert.Equal(["bakes.html", "sheet.html"], Directory.GetFiles(_folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_name_is_on_no_sheet_that_hides_names()
    {
        var journal = _folder.Write("bakes.csv", "baked_on,baker,formula,dov_score,flour_g,water_g\n2026-10-05,Dov,Dov's loaf,3,1000,650\n");
        var page = _folder.File("sheet.html");
        var text = Command.Run("sheet", journal, "--formula", "dov's loaf", "--bake", "Dov's bench", "--hide-names", "--json", "--to", page);
        Assert.Equal((0, ""), (text.Status, text.Error));
        Assert.DoesNotContain("dov", text.Out, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("dov", File.ReadAllText(page), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Same_wishes_give_the_same_bytes_in_every_culture() => Assert.Equal(
        Command.Run("sheet", Command.Demo, "--finish-by", "13:00", "--bake", "A: hydration=68.5").Out,
        Command.RunUnder("de-DE", "sheet", Command.Demo, "--finish-by", "13:00", "--bake", "A: hydration=68.5").Out);

    private static (int Status, string Out, string Error) Outcome(Command run) => (run.Status, run.Out, run.Error);

    private static string Written(string name, string units) => name switch
    {
        "bake_id" => "",
        "baked_on" => "2026-11-02",
        "baker" or "formula" => "Mirre",
        "flour_g" => "1000",
        "flour_measure" => "weighed",
        "water_g" => "660",
        "salt_g" => "20",
        "yeast_g" => "10",
        "yeast_kind" => "instant",
        "dough_temp" or "dough_temp_c" => units == "us" ? "77" : "25",
        "oven_temp" or "oven_temp_c" => units == "us" ? "446" : "230",
        "mix_min" => "8",
        "rise_min" => "95",
        "rise_not_ready_min" => "85",
        "rise_outcome" => "ready",
        "proof_min" => "42",
        "bake_min" => "36",
        "steam" => "yes",
        "dough_g" => "1665",
        "loaf_count" => "2",
        "loaf_g" => "730",
        "loaf_volume_ml" => "2900",
        "crumb_score" => "4",
        _ => units == "us" ? "70" : "21",
    };
}
