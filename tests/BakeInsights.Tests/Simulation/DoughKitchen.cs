namespace BakeInsights.Tests;

/// <summary>A kitchen whose doughs get as warm as stated numbers say, but for a scatter.</summary>
/// <param name="Warming">°C that a dough of 24 °C all through gains in 8 minutes of mixing.</param>
/// <param name="Water">Degrees of dough for each degree of water.</param>
/// <param name="Flour">For each degree of flour.</param>
/// <param name="Room">For each degree of the room.</param>
/// <param name="Mixing">°C a minute.</param>
/// <param name="Scatter">Standard deviation, in °C.</param>
internal sealed record DoughKitchen(double Warming, double Water, double Flour, double Room, double Mixing, double Scatter)
{
    /// <summary>The middle of the bands in which the trade expects them: facts on dough temperature, section 3.</summary>
    public static DoughKitchen Middle { get; } = new(20 / 5.4, 0.475, 0.3, 0.175, 2 / 5.4, 0.7);

    /// <summary>A kitchen drawn from those bands, mean and standard deviation each, the scatter log-normal.</summary>
    public static DoughKitchen Drawn(Random random) => new(
        (20 + (15 * Normal(random))) / 5.4,
        0.475 + (0.125 * Normal(random)),
        0.3 + (0.1 * Normal(random)),
        0.175 + (0.125 * Normal(random)),
        (2 + (2 * Normal(random))) / 5.4,
        0.7 * Math.Pow(2, Normal(random)));

    public double PartOf(string cause) => cause switch
    {
        "warming" => Warming,
        "water" => Water,
        "flour" => Flour,
        "room" => Room,
        _ => Mixing,
    };

    /// <summary>The mean dough of such settings.</summary>
    public double DoughC(double water, double flour, double room, double minutes) =>
        24 + Warming + (Water * (water - 24)) + (Flour * (flour - 24)) + (Room * (room - 24)) + (Mixing * (minutes - 8));

    /// <summary>The water whose mean dough has this temperature.</summary>
    public double WaterC(double dough, double flour, double room, double minutes) =>
        24 + ((dough - DoughC(24, flour, room, minutes)) / Water);

    /// <summary>Bakes on days of all kinds: on a warm one the flour is warm too, and the baker pours colder water.</summary>
    public IReadOnlyList<Bake> Bakes(int count, Random random) => [.. Enumerable.Range(0, count).Select(index =>
    {
        var day = Day(random);
        return Bake(index, day.Water, day.Flour, day.Room, day.Minutes, DoughC(day.Water, day.Flour, day.Room, day.Minutes) + (Scatter * Normal(random)));
    })];

    public static (double Water, double Flour, double Room, double Minutes) Day(Random random)
    {
        var room = 22 + (2.5 * Normal(random));
        var flour = room - 1 + Normal(random);
        var water = 22 - (0.6 * (room - 22)) + (5 * Normal(random));
        return (Math.Clamp(water, 1, 60), flour, room, 5 + (2 * random.Next(4)));
    }

    public static Bake Bake(int index, double? water, double? flour, double? room, double? minutes, double? dough)
    {
        var draft = new BakeDraft($"K{index + 1}", new DateOnly(2026, 10, 1));
        foreach (var (column, value) in new[]
        {
            (BakeColumns.WaterTemp, water), (BakeColumns.FlourTemp, flour), (BakeColumns.RoomTemp, room), (BakeColumns.Mix, minutes),
            (BakeColumns.DoughTemp, dough),
        })
        {
            if (value is { } known)
            {
                draft.Set(column, Math.Clamp(known, column.Low, column.High));
            }
        }

        return draft.Finish(new SourceLine("bakes.csv", index + 2));
    }

    // Box and Muller (1958), Annals of Mathematical Statistics 29, 610-611.
    public static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
