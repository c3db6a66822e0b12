using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

/// <summary>tune: what it prints, and what it refuses.</summary>
[Collection(nameof(Command))]
public sealed class TuneCommandTests
{
    private static readonly string Lane = Repository.Path("data-demo/millpond-lane");

    public static TheoryData<string[], string> Refusals => new()
    {
        {
            [],
            "Nothing is wished for: say --ready-within \"90 min\", --volume-at-least 4.2 or --crumb 3-5, or ask backwards with --ready-by."
        },
        {
            ["--ready-by", "80 min", "--ready-within", "90 min"],
            "--ready-by asks backwards and takes no other wish: write --ready-within in its place."
        },
        {
            ["--ready-by", "14:30"],
            "--ready-by 14:30 is a time of day: say with --mixed-at when mixing ends, or write minutes, such as \"90 min\"."
        },
        {
            ["--ready-by", "13:00", "--mixed-at", "13:00"],
            "--ready-by 13:00 is no later than --mixed-at 13:00: write the later time behind --ready-by."
        },
        {
            ["--ready-by", "80 min", "--taps", "12C,120C"],
            "--taps 12C,120C can't be water: it goes from 0.0 °C to 100.0 °C, the cold tap first, as 12C,55C."
        },
        { ["--ready-by", "80 min", "--kitchen", "90C"], "--kitchen 90.0 °C is no kitchen's: it goes from -10.0 °C to 50.0 °C." },
        {
            ["--ready-within", "5 min"],
            "Ready within 5 min can't be met: the soonest that the journal supports is 59 min (50 to 69 for one more bake, 95 %) with a dough of 25.5 °C, "
            + "hydration 72.9 %, yeast (as instant) 1.46 %, salt 1.99 %. Wish for less, or bake other doughs first."
        },
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Impossible_wishes_are_refused_with_what_is_possible(string[] wishes, string line) => Command.Run(["tune", Lane, .. wishes]).Refuses(line);

    [Fact]
    public void A_wish_gets_a_formula_its_chance_and_its_costs_in_text_and_JSON()
    {
        string[] wish = ["tune", Lane, "--ready-within", "90 min", "--volume-at-least", "4.2"];
        var text = Command.Run(wish);
        Assert.Equal(0, text.Status);
        Assert.StartsWith("Tuned formula\n-------------\n\nWished: ready within 90 min and volume at least 4.20 mL/g.", text.Out, StringComparison.Ordinal);
        Assert.All(text.Out.Split('\n'), row => Assert.InRange(row.Length, 0, 80));

        var json = Command.Run([.. wish, "--json"]);
        Assert.Equal(45, (int)json.Json["journal"]!["bakes"]!);
        Assert.Equal(json.Out, Command.Run([.. wish, "--json"]).Out);
    }

    [Fact]
    public void A_time_gets_a_dough_temperature_and_a_yeast()
    {
        var asked = Command.Run(["tune", Lane, "--ready-by", "14:20", "--mixed-at", "13:00"]);
        Assert.Equal(0, asked.Status);
        Assert.Contains("Wanted: ready 80 min after mixing.", asked.Out, StringComparison.Ordinal);
        Assert.All(asked.Out.Split('\n'), row => Assert.InRange(row.Length, 0, 80));
    }
}
