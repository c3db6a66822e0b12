using System.Text.Json;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

/// <summary>next, plan and compare: what they print, what they refuse.</summary>
[Collection(nameof(Command))]
public sealed class PlanningCommandTests : IDisposable
{
    private const string Yard = "data-demo/osier-yard";
    private static readonly string Class = Repository.Path(Yard);
    private static readonly string TwoFormulas = Repository.ReferenceData("r/compare.csv");

    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string, string> Refusals => new()
    {
        { "next j --bakes 0", "--bakes 0 can't be planned: say 1 to 24, and plan again after these." },
        { "next j --bakes 99", "--bakes 99 can't be planned: say 1 to 24, and plan again after these." },
        { "next j --until -1", "--until -1 can't be reached: say a number above 0, such as 2." },
        { "next j --question crust", "There is no question crust: say best_hydration, rise_by_dough_temperature, rise_by_yeast, rise_by_hydration." },
        { "next j --hydration 600-720", "--hydration 600-720 can't be baked: write the lower and the higher number, from 40 to 120, such as 60-72." },
        { "next j --hydration 72-60", "--hydration 72-60 can't be baked: write the lower and the higher number, from 40 to 120, such as 60-72." },
        { "next j --yeast much", "--yeast much can't be baked: write the lower and the higher number, from 0.1 to 5, such as 0.6-1.4." },
        { "next j --dough-temp 70-80", "--dough-temp 70-80 can't be baked: write the lower and the higher number, from 5 to 40, such as 22-27." },
        { "next j --dough-temp 20-25 --units us", "--dough-temp 20-25 can't be baked: write the lower and the higher number, from 41 to 104, such as 72-80." },
        { "next j --units stone", "There are no units stone: say metric or us." },
        { "compare j", "Two ways are compared: name them with --this and --that, such as --this \"lane loaf\" --that \"seed loaf\"." },
        { "compare j --this a --that A", "a is compared with itself: name another way with --that." },
        { "compare j --this a --that b --margin 0", "--margin 0 is no margin: say a percentage above 0 and below 100, such as 10." },
    };

    public static TheoryData<string, string> PlanRefusals => new()
    {
        { "--difference 10", "Nothing is varied: say what, such as --vary hydration=64,70." },
        { "--vary hydration=64 --difference 10", "--vary hydration=64 has no two levels: write a name and its levels, such as hydration=64,70." },
        { "--vary a=1,2 --vary a=3,4 --difference 10", "a is varied twice: give all its levels at once, such as --vary a=low,high." },
        { "--vary a=1,2", "How large a difference is worth finding isn't said: write --difference 10." },
        { "--vary a=1,2 --difference 0", "--difference 0 is none: say a number above 0." },
        { "--vary a=1,2 --difference 10 --chance 100", "--chance 100 is none: say more than 5 and less than 100, such as 80." },
        { "--vary a=1,2 --difference 10 --benches 0", "--benches 0 can't be planned: say 1 to 40." },
        { "--vary a=1,2 --difference 10 --benches x,x", "--benches x,x can't be read: write a number, or names with commas between, none twice." },
        { "--vary a=1,2 --difference 10 --result crumb", "There is no result crumb: say rise or volume." },
        { "--vary a=1,2 --difference 10 --spare 200", "--spare 200 is none: say 0 to 100." },
        { "--vary a=1,2 --difference 10 --most 0", "--most 0 leaves nothing to bake: say 1 or more." },
        {
            "--vary a=1,2 --difference 10 --half",
            "Half of the combinations takes three things varied or more, each at two levels. There are 1, at 2: plan all combinations, or change that."
        },
    };

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Impossible_wishes_are_refused_with_what_is_possible(string arguments, string line) => Command.Run(arguments.Split(' ')).Refuses(line);

    [Theory]
    [MemberData(nameof(PlanRefusals))]
    public void Impossible_class_plans_are_refused_with_what_is_possible(string arguments, string line) =>
        Command.Run(["plan", Class, .. arguments.Split(' ')]).Refuses(line);

    [Fact]
    public void A_class_too_small_for_the_difference_is_told_what_it_could_find()
    {
        var plan = Command.Run("plan", Class, "--vary", "hydration=64,70", "--difference", "2");
        Assert.Equal((2, ""), (plan.Status, plan.Out));
        Assert.Matches(
            @"^With at most 16 bakes at each of 3 benches a difference of 2 % is found in \d+ of 100 such classes\. "
            + @"[\d.]+ % can be found in 80 of 100: look for that, allow more bakes, or take more benches\.\r?\n$",
            plan.Error);
    }

    [Fact]
    public void Journals_that_cannot_answer_are_refused_with_what_would_help()
    {
        var empty = _folder.Write("bakes.csv", "bake_id,baked_on\nA,2026-10-01\n");
        Command.Run("next", empty).Refuses(
            "No bake says its dough temperature, so what can be baked isn't known. Say the range of dough temperature that you can bake.");
        Command.Run("compare", TwoFormulas, "--this", "lane loaf", "--that", "rye").Refuses("No bake has rye in column formula. Name two of these: lane loaf, seed loaf.");
        Command.Run("plan", empty, "--vary", "a=1,2", "--difference", "10").Refuses(
            "The journal names no groups: say how many benches there are, such as --benches 4.");
    }

    [Fact]
    public void Next_plans_as_many_bakes_as_asked_in_text_and_JSON()
    {
        var text = Command.Run("next", Command.Demo, "--bakes", "3", "--until", "1.5");
        Assert.Equal((0, ""), (text.Status, text.Error));
        Assert.Contains("After these 3 bakes expect ±", text.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        var json = Command.Run("next", Command.Demo, "--bakes", "3", "--until", "1.5", "--json");
        Assert.Equal((0, ""), (json.Status, json.Error));
        Assert.Equal(3, json.Json["bakes"]!.AsArray().Count);
        Assert.All(json.Json["bakes"]!.AsArray(), bake => Shape.Is(
            bake, ("order", JsonValueKind.Number), ("dough_temp_c", JsonValueKind.Number), ("hydration_pct", JsonValueKind.Number),
            ("yeast_pct", JsonValueKind.Number), ("water_temp_c", JsonValueKind.Number)));
        Shape.Is(
            json.Json["narrowing"], ("low", JsonValueKind.Number), ("high", JsonValueKind.Number), ("half", JsonValueKind.Number),
            ("is_open", JsonValueKind.False), ("half_after", JsonValueKind.Number), ("half_after_nine_of_ten", JsonValueKind.Number),
            ("still_open_share", JsonValueKind.Number));
    }

    [Fact]
    public void Plan_gives_every_bench_its_bakes_in_text_and_JSON()
    {
        string[] asked = ["plan", Class, "--vary", "hydration=64,70", "--vary", "oven=220,240", "--set-for-all", "oven", "--difference", "10"];
        var text = Command.Run(asked);
        Assert.Equal((0, ""), (text.Status, text.Error));
        Assert.Contains("Door bench, in this order:", text.Out, StringComparison.Ordinal);
        var json = Command.Run([.. asked, "--json"]).Json;
        Assert.Equal(3, json["benches"]!.AsArray().Count);
        Assert.Equal(json["bakes"]!.AsArray().Count, 3 * json["bakes"]!.AsArray().Count(bake => (string?)bake!["bench"] == "door bench"));
        Assert.All(json["varied"]!.AsArray(), varied => Shape.Is(
            varied, ("name", JsonValueKind.String), ("levels", JsonValueKind.Array), ("bakes_per_level", JsonValueKind.Number),
            ("chance", JsonValueKind.Number), ("degrees_of_freedom", JsonValueKind.Number),
            ("between_rounds", (string?)varied!["name"] == "oven" ? JsonValueKind.True : JsonValueKind.False)));
    }

    [Fact]
    public void Compare_sets_two_formulas_side_by_side_in_text_and_JSON()
    {
        string[] asked = ["compare", TwoFormulas, "--this", "lane loaf", "--that", "seed loaf"];
        var text = Command.Run(asked);
        Assert.Equal((0, ""), (text.Status, text.Error));
        Assert.Contains("Rise time: different.", text.Out, StringComparison.Ordinal);
        var json = Command.Run([.. asked, "--json"]).Json;
        Assert.Equal(["rise_min", "specific_volume_ml_per_g"], json["results"]!.AsArray().Select(result => (string)result!["result"]!));
        Assert.Equal("different", (string?)json["results"]![0]!["likeness"]);
        Assert.Equal(12, (int)json["first"]!["bakes"]!);
    }

    [Fact]
    public void All_three_are_the_same_bytes_in_every_culture_and_within_eighty_columns()
    {
        string[][] asked =
        [
            ["next", Command.Demo, "--units", "us"],
            ["plan", Class, "--vary", "hydration=64,70", "--difference", "0.3", "--result", "volume", "--units", "us"],
            ["compare", TwoFormulas, "--this", "lane loaf", "--that", "seed loaf", "--units", "us"],
        ];
        foreach (var arguments in asked)
        {
            var usual = Command.RunUnder("en-US", arguments);
            Assert.Equal(0, usual.Status);
            Assert.Equal(usual, Command.RunUnder("de-DE", arguments));
            Assert.All(usual.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
            string[] json = [.. arguments, "--json"];
            Assert.Equal(Command.RunUnder("en-US", json), Command.RunUnder("tr-TR", json));
        }
    }

    [Fact]
    public void Seeds_change_the_order_and_the_same_seed_gives_the_same_bytes()
    {
        static string Plan(string seed) => Command.Run("plan", Class, "--vary", "hydration=64,70", "--difference", "10", "--seed", seed).Out;

        Assert.Equal(Plan("3"), Plan("3"));
        Assert.NotEqual(Plan("3"), Plan("4"));
        Assert.Equal(Command.Run("next", Command.Demo, "--seed", "3"), Command.Run("next", Command.Demo, "--seed", "3"));
    }

    [Fact]
    public void Names_are_hidden_where_bakers_are_compared()
    {
        var names = new[] { "baker A", "baker B" };
        var compared = Command.Run("compare", Class, "--by", "baker", "--this", names[0], "--that", names[1], "--hide-names");
        Assert.Equal((0, ""), (compared.Status, compared.Error));
        Assert.All(Journal.Read(Class).Bakes.Select(bake => bake[BakeColumns.Baker]).OfType<string>().Distinct(), name =>
            Assert.DoesNotContain(name, compared.Out, StringComparison.Ordinal));
    }
}
