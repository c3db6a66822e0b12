namespace BakeInsights;

/// <summary>All columns of <c>bakes*.csv</c>, in their canonical order.</summary>
/// <remarks>
/// The ranges are what can be meant at all: a value outside is a slip of the pen or of the unit. Common practice of
/// the trade, no source, except where a remark says otherwise.
/// </remarks>
public static class BakeColumns
{
    private const double HeaviestG = 100_000;
    private const double LongestMin = 5_760; // four days of retarding
    private const double LastSecondOfDay = 86_399 / 60d; // 23:59:59, in minutes

    private static readonly List<BakeColumn> Columns = [];
    private static int _quantities;
    private static int _choices;
    private static int _texts;

    /// <summary>The bake's own name; a row without one is named for its line.</summary>
    public static TextColumn Id { get; } = Text("bake_id", "the bake's own name, once in the journal");

    /// <summary>The day of the bake. The one column that a row can't do without.</summary>
    public static TextColumn BakedOn { get; } = Text("baked_on", "day of the bake, as 2026-10-31");

    /// <summary>Who baked.</summary>
    public static TextColumn Baker { get; } = Text("baker", "who baked");

    /// <summary>Which formula.</summary>
    public static TextColumn Formula { get; } = Text("formula", "name of the formula");

    /// <summary>All flour weighed in.</summary>
    public static QuantityColumn Flour { get; } = Mass("flour", "flour, without that of a preferment", 10);

    /// <summary>Which flour.</summary>
    public static TextColumn FlourKind { get; } = Text("flour_kind", "name of the flour");

    /// <summary>How the flour was measured.</summary>
    public static ChoiceColumn FlourMeasure { get; } = Choice(
        "flour_measure", "how the flour was measured", "weighed", "spooned", "scooped", "sifted", "cup_unknown");

    /// <summary>Water poured in.</summary>
    public static QuantityColumn Water { get; } = Mass("water", "water, without that of a preferment");

    /// <summary>Salt.</summary>
    public static QuantityColumn Salt { get; } = Mass("salt", "salt");

    /// <summary>Yeast as it was weighed.</summary>
    public static QuantityColumn Yeast { get; } = Mass("yeast", "yeast of the kind in yeast_kind");

    /// <summary>Which yeast.</summary>
    public static ChoiceColumn YeastKind { get; } = Choice(
        "yeast_kind", "kind of yeast", "fresh", "active_dry", "instant");

    /// <summary>Sugar.</summary>
    public static QuantityColumn Sugar { get; } = Mass("sugar", "sugar");

    /// <summary>Fat of any kind.</summary>
    public static QuantityColumn Fat { get; } = Mass("fat", "butter, oil or other fat");

    /// <summary>Milk.</summary>
    public static QuantityColumn Milk { get; } = Mass("milk", "milk");

    /// <summary>Egg without shell.</summary>
    public static QuantityColumn Egg { get; } = Mass("egg", "egg, without the shell");

    /// <summary>Honey.</summary>
    public static QuantityColumn Honey { get; } = Mass("honey", "honey");

    /// <summary>A dough fermented ahead.</summary>
    public static QuantityColumn Preferment { get; } = Mass("preferment", "poolish, sponge or levain, all of it");

    /// <summary>The preferment's own hydration.</summary>
    public static QuantityColumn PrefermentHydration { get; } = Quantity(
        "preferment_hydration", Dimension.Percent, "water of the preferment in percent of its flour", 40, 200);

    /// <summary>Air of the room.</summary>
    public static QuantityColumn RoomTemp { get; } = Temperature("room_temp", "the room", -10, 50);

    /// <summary>Flour.</summary>
    public static QuantityColumn FlourTemp { get; } = Temperature("flour_temp", "the flour", -20, 45);

    /// <summary>Water as poured.</summary>
    public static QuantityColumn WaterTemp { get; } = Temperature("water_temp", "the water as poured", 0, 70);

    /// <summary>Preferment.</summary>
    public static QuantityColumn PrefermentTemp { get; } = Temperature("preferment_temp", "the preferment", 0, 50);

    /// <summary>The dough at the end of mixing.</summary>
    public static QuantityColumn DoughTemp { get; } = Temperature("dough_temp", "the dough when mixing ends", 0, 50);

    /// <summary>The place of the first rise.</summary>
    public static QuantityColumn RiseTemp { get; } = Temperature("rise_temp", "the place of the first rise", -10, 60);

    /// <summary>The place of the proof.</summary>
    public static QuantityColumn ProofTemp { get; } = Temperature("proof_temp", "the place of the proof", -10, 60);

    /// <summary>The oven at loading.</summary>
    public static QuantityColumn OvenTemp { get; } = Temperature("oven_temp", "the oven at loading", 100, 350);

    /// <summary>The middle of the crumb when the loaf comes out.</summary>
    public static QuantityColumn CoreTemp { get; } = Temperature("core_temp", "the crumb's middle at the end", 60, 105);

    /// <summary>End of mixing.</summary>
    public static QuantityColumn MixedAt { get; } = TimeOfDay("mixed_at", "end of mixing");

    /// <summary>Found ready.</summary>
    public static QuantityColumn ReadyAt { get; } = TimeOfDay("ready_at", "dough found ready");

    /// <summary>Into the oven.</summary>
    public static QuantityColumn LoadedAt { get; } = TimeOfDay("loaded_at", "into the oven");

    /// <summary>Out of the oven.</summary>
    public static QuantityColumn OutAt { get; } = TimeOfDay("out_at", "out of the oven");

    /// <summary>Mixing.</summary>
    public static QuantityColumn Mix { get; } = Minutes("mix", "mixing", 0, 240);

    /// <summary>First rise: the first look at which the dough was ready.</summary>
    public static QuantityColumn Rise { get; } = Minutes("rise", "first rise, to the first look that found it ready", 1, LongestMin);

    /// <summary>First rise: the last look at which it was not ready.</summary>
    public static QuantityColumn RiseNotReady { get; } =
        Minutes("rise_not_ready", "first rise, to the last look that found it not ready", 0, LongestMin);

    /// <summary>How the first rise ended.</summary>
    public static ChoiceColumn RiseOutcome { get; } = Choice("rise_outcome", "how the first rise ended", "ready", "stopped");

    /// <summary>The part of the rise spent in the cold.</summary>
    public static QuantityColumn Cold { get; } = Minutes("cold", "part of the first rise spent in the cold", 0, LongestMin);

    /// <summary>Proof: the first look at which the pieces were ready.</summary>
    public static QuantityColumn Proof { get; } = Minutes("proof", "proof, to the first look that found it ready", 0, 4_320);

    /// <summary>Proof: the last look at which they were not.</summary>
    public static QuantityColumn ProofNotReady { get; } =
        Minutes("proof_not_ready", "proof, to the last look that found it not ready", 0, 4_320);

    /// <summary>What a dent did at the end of the proof.</summary>
    public static ChoiceColumn PressTest { get; } = Choice(
        "press_test", "what a dent in the dough did", "springs_back", "slow_return", "keeps_dent", "collapses");

    /// <summary>In the oven.</summary>
    public static QuantityColumn Baking { get; } = Minutes("bake", "in the oven", 3, 240);

    /// <summary>Out of the oven until weighed.</summary>
    public static QuantityColumn Cool { get; } = Minutes("cool", "from the oven to the scale", 0, LongestMin);

    /// <summary>Whether the oven was steamed.</summary>
    public static ChoiceColumn Steam { get; } = Choice("steam", "whether the oven was steamed", "yes", "no");

    /// <summary>The whole dough.</summary>
    public static QuantityColumn Dough { get; } = Mass("dough", "the whole dough that went to the oven", 1);

    /// <summary>Loaves of the dough.</summary>
    public static QuantityColumn LoafCount { get; } = Quantity("loaf_count", Dimension.Number, "loaves of the dough", 1, 10_000);

    /// <summary>One cooled loaf.</summary>
    public static QuantityColumn Loaf { get; } = Mass("loaf", "one cooled loaf, the mean of the bake", 1);

    /// <summary>Volume of one loaf.</summary>
    public static QuantityColumn LoafVolume { get; } =
        Quantity("loaf_volume", Dimension.Volume, "volume of one loaf, the mean of the bake", 1, HeaviestG);

    /// <summary>Crumb.</summary>
    public static QuantityColumn CrumbScore { get; } = Score("crumb_score", "the crumb, on the journal's own scale");

    /// <summary>Crust.</summary>
    public static QuantityColumn CrustScore { get; } = Score("crust_score", "the crust, on the journal's own scale");

    /// <summary>Flavour.</summary>
    public static QuantityColumn FlavourScore { get; } = Score("flavour_score", "the flavour, on the journal's own scale");

    /// <summary>Bench, class or batch.</summary>
    public static TextColumn Group { get; } = Text("group", "bench, class or batch that the bake belongs to");

    /// <summary>Anything else.</summary>
    public static TextColumn Notes { get; } = Text("notes", "anything else");

    /// <summary>All columns, in canonical order.</summary>
    public static IReadOnlyList<BakeColumn> All => Columns;

    internal static int QuantityCount => _quantities;

    internal static int ChoiceCount => _choices;

    internal static int TextCount => _texts;

    private static QuantityColumn Mass(string stem, string meaning, double low = 0) =>
        Quantity(stem, Dimension.Mass, meaning, low, HeaviestG);

    private static QuantityColumn Temperature(string stem, string place, double low, double high) =>
        Quantity(stem, Dimension.Temperature, "temperature of " + place, low, high);

    private static QuantityColumn Minutes(string stem, string what, double low, double high) =>
        Quantity(stem, Dimension.Duration, "time: " + what, low, high);

    private static QuantityColumn TimeOfDay(string stem, string meaning) =>
        Quantity(stem, Dimension.TimeOfDay, "time of day: " + meaning, 0, LastSecondOfDay);

    private static QuantityColumn Score(string stem, string what) =>
        Quantity(stem, Dimension.Number, "score of " + what, 0, 1_000);

    private static QuantityColumn Quantity(string stem, Dimension dimension, string meaning, double low, double high) =>
        Add(new QuantityColumn(_quantities++, stem, dimension, meaning, low, high));

    private static ChoiceColumn Choice(string name, string meaning, params string[] values) =>
        Add(new ChoiceColumn(_choices++, name, meaning, values));

    private static TextColumn Text(string name, string meaning) => Add(new TextColumn(_texts++, name, meaning));

    private static TColumn Add<TColumn>(TColumn column)
        where TColumn : BakeColumn
    {
        Columns.Add(column);
        return column;
    }
}
