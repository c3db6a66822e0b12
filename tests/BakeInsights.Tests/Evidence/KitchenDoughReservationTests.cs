using Xunit;

namespace BakeInsights.Tests;

/// <summary>What is left out of a kitchen's dough temperature, and what is said with it.</summary>
public class KitchenDoughReservationTests
{
    private const string Common = "A journal shows what went together, not what caused it; a bake made to find out settles more.";

    private static readonly MixingConditions Usual = new(Temperature.FromC(21), Temperature.FromC(22)) { MixMin = 7 };

    /// <summary>Water 14 to 30 °C, flour 18 to 24, room 19 to 25, mixing 6 to 9 min, each in its own rhythm.</summary>
    private static IReadOnlyList<Bake> Bakes(Func<int, double, double>? change = null, int count = 24) =>
        [.. Enumerable.Range(0, count).Select(i =>
        {
            double water = 14 + (i * 7 % 17), flour = 18 + (i * 5 % 7), room = 19 + (i * 3 % 7), minutes = 6 + (i % 4);
            var dough = DoughKitchen.Middle.DoughC(water, flour, room, minutes) + (0.2 * ((i * 11 % 7) - 3));
            return DoughKitchen.Bake(i, water, flour, room, minutes, change?.Invoke(i, dough) ?? dough);
        })];

    private static KitchenDoughTemperature Learn(IReadOnlyList<Bake> bakes) => KitchenDoughTemperature.Learn(bakes).Value;

    [Fact]
    public void A_journal_that_varies_and_agrees_has_the_common_caveat_alone() =>
        Assert.Equal([Common], Learn(Bakes()).Caveats(UnitSystem.Metric));

    [Fact]
    public void Without_bakes_the_caveat_says_that_it_is_physics_alone() => Assert.Equal(
        [
            "No bake could be used, so all of this is the physical balance and trade figures; a few bakes with water, flour, room and dough "
                + "temperature make it this kitchen's own.",
        ],
        Learn([]).Caveats(UnitSystem.Metric));

    [Fact]
    public void Bakes_that_can_not_speak_are_left_out_with_the_reason()
    {
        static BakeDraft Draft(string id) => new BakeDraft(id, new DateOnly(2026, 10, 1))
            .Set(BakeColumns.WaterTemp, 20).Set(BakeColumns.FlourTemp, 20).Set(BakeColumns.RoomTemp, 20)
            .Set(BakeColumns.Mix, 8).Set(BakeColumns.DoughTemp, 25);
        static Bake Done(BakeDraft draft) => draft.Finish(new SourceLine("bakes.csv", 2));
        Bake[] odd =
        [
            DoughKitchen.Bake(100, 20, 20, 20, 8, null), DoughKitchen.Bake(101, null, 20, 20, 8, 25), DoughKitchen.Bake(102, 20, null, 20, 8, 25),
            DoughKitchen.Bake(103, 20, 20, null, 8, 25), DoughKitchen.Bake(104, 20, 20, 20, null, 25),
            Done(Draft("P").Set(BakeColumns.Preferment, 300)), Done(Draft("M").Set(BakeColumns.Milk, 100)), Done(Draft("E").Set(BakeColumns.Egg, 50)),
            Done(Draft("none of each").Set(BakeColumns.Preferment, 0).Set(BakeColumns.Milk, 0).Set(BakeColumns.Egg, 0)),
        ];

        var learned = Learn([.. Bakes(), .. odd]);

        Assert.Equal(25, learned.Used.Count);
        Assert.Equal("none of each", learned.Used[^1].Id);
        Assert.Equal(
            [
                "no dough temperature: K101", "no water temperature: K102", "no flour temperature: K103", "no room temperature: K104",
                "a preferment, which brings a temperature of its own: P", "milk or egg, whose temperature is not logged: M, E",
                "no mixing time: K105",
            ],
            learned.LeftOutBakes.Select(left => $"{left.Reason}: {string.Join(", ", left.Bakes.Select(bake => bake.Id))}"));
    }

    [Fact]
    public void Mixing_time_that_is_seldom_logged_is_not_counted()
    {
        var bakes = Bakes().Select((bake, i) => i < 5 ? bake : DoughKitchen.Bake(
            i, bake[BakeColumns.WaterTemp], bake[BakeColumns.FlourTemp], bake[BakeColumns.RoomTemp], null, bake[BakeColumns.DoughTemp])).ToList();
        var learned = Learn(bakes);

        Assert.Equal(24, learned.Used.Count);
        Assert.Equal(
            ["Mixing time is logged in 5 of 24 bakes, too few to count it. Doughs are taken as mixed for the usual time.", Common],
            learned.Caveats(UnitSystem.Metric));
        Assert.Equal("Mixing time is logged in 5 of 24 bakes, too few to count it.", learned.Part("mixing").WhyNoJournal);
        Assert.Equal(
            learned.At(Temperature.FromC(20), Usual), learned.At(Temperature.FromC(20), Usual with { MixMin = 30 }));
    }

    [Fact]
    public void Water_and_room_that_moved_together_are_said_to_have()
    {
        var bakes = Enumerable.Range(0, 12).Select(i =>
        {
            var room = 18 + i;
            var water = 32 - i + (i % 2);
            double flour = 20 + (i * 5 % 7);
            return DoughKitchen.Bake(i, water, flour, room, 6 + (i * 7 % 4), DoughKitchen.Middle.DoughC(water, flour, room, 6 + (i * 7 % 4)) + (0.2 * (i * 5 % 3)));
        }).ToList();

        Assert.Equal(
            [
                "Moved together in the journal: water and room temperature (correlation −0.99). It tells their parts apart mostly by what physics says of "
                    + "them.",
                Common,
            ],
            Learn(bakes).Caveats(UnitSystem.Metric));
    }

    [Fact]
    public void A_mistyped_dough_is_named_in_either_unit()
    {
        var learned = Learn(Bakes((i, dough) => i == 6 ? dough + 9 : dough, 60));

        Assert.Contains("The dough of bake K7 was 8.8 °C warmer than expected; look whether a temperature is mistyped.", learned.Caveats(UnitSystem.Metric));
        Assert.Contains("The dough of bake K7 was 16 °F warmer than expected; look whether a temperature is mistyped.", learned.Caveats(UnitSystem.Us));
    }

    [Fact]
    public void A_journal_that_physics_can_not_explain_is_said_to_disagree()
    {
        // Dough and water in the same degree: the probe was left in the water.
        var learned = Learn(Bakes((i, _) => 14 + (i * 7 % 17) + (0.2 * ((i * 11 % 7) - 3))));

        Assert.True(learned.Part("water").IsConflict);
        Assert.Contains(
            "The journal and physics disagree on water temperature (p = 0.000), so both together suit neither; look for temperatures in the "
                + "wrong column or unit.",
            learned.Caveats(UnitSystem.Metric));
    }

    [Fact]
    public void Water_that_makes_doughs_colder_names_no_water()
    {
        var learned = Learn(Bakes((i, _) => 40 - (14 + (i * 7 % 17)) + (0.2 * ((i * 11 % 7) - 3)), 200));

        Assert.False(learned.WaterFor(Temperature.FromC(25), Usual, new(Temperature.FromC(10), Temperature.FromC(50)), 650).TryGet(out _, out var problem));

        Assert.Equal(BakeColumns.WaterTemp.Name, Assert.Single(problem.Columns));
        Assert.Equal("The bakes show no warmer dough from warmer water, so no water can be named.", problem.Message);
        Assert.Equal(
            "Look for temperatures in the wrong column, and log bakes whose water_temp_c differs by several degrees.", problem.Remedy);
    }

    [Theory]
    [InlineData(1, "One bake is too few to tell its part by themselves.")]
    [InlineData(2, "2 bakes are too few to tell its part by themselves.")]
    public void Very_few_bakes_move_the_answer_and_say_nothing_by_themselves(int count, string why)
    {
        var learned = Learn(Bakes((_, dough) => dough + 3, count));

        Assert.All(learned.Parts, part => Assert.Null(part.Journal));
        Assert.Equal(why, learned.Part("warming").WhyNoJournal);
        Assert.True(learned.Part("warming").Together.Value > learned.Part("warming").Physics.Value + 0.5);
    }

    [Fact]
    public void A_cause_that_never_changed_is_held_at_physics()
    {
        var bakes = Bakes().Select((bake, i) => DoughKitchen.Bake(i, bake[BakeColumns.WaterTemp], 20, 20, 8, DoughKitchen.Middle.DoughC(
            bake[BakeColumns.WaterTemp]!.Value, 20, 20, 8) + (0.2 * ((i * 11 % 7) - 3)))).ToList();
        var learned = Learn(bakes);

        Assert.Equal("Room temperature hardly changed from bake to bake.", learned.Part("room").WhyNoJournal);
        Assert.Equal(learned.Part("warming").Physics.Value, learned.Part("warming").Journal!.Value, 0.2);
        Assert.Null(learned.Part("warming").ConflictPValue);
        Assert.NotNull(learned.Part("water").ConflictPValue);
    }

    [Fact]
    public void Doughs_that_are_all_the_same_or_lie_on_a_line_leave_the_journal_without_a_word_of_its_own()
    {
        Assert.Equal("The dough temperature was the same in every bake.", Learn(Bakes((_, _) => 24)).Part("water").WhyNoJournal);
        var same = Learn([.. Enumerable.Range(0, 8).Select(i => DoughKitchen.Bake(i, 20, 20, 20, 8, 26))]);
        Assert.All(same.Parts, part => Assert.Null(part.Journal));
        Assert.Equal([Common], same.Caveats(UnitSystem.Metric));
    }
}
