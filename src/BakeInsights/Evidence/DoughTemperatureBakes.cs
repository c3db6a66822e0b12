namespace BakeInsights;

/// <summary>The bakes that can speak of a kitchen's dough temperature, as rows of the model.</summary>
internal sealed class DoughTemperatureBakes
{
    private static readonly IReadOnlyList<Exclusion> Exclusions =
    [
        new("no dough temperature", bake => bake[BakeColumns.DoughTemp] is null),
        new("no water temperature", bake => bake[BakeColumns.WaterTemp] is null),
        new("no flour temperature", bake => bake[BakeColumns.FlourTemp] is null),
        new("no room temperature", bake => bake[BakeColumns.RoomTemp] is null),
        new("a preferment, which brings a temperature of its own", bake => bake[BakeColumns.Preferment] > 0),
        new("milk or egg, whose temperature is not logged", bake => bake[BakeColumns.Milk] > 0 || bake[BakeColumns.Egg] > 0),
    ];

    public DoughTemperatureBakes(IReadOnlyList<Bake> bakes)
    {
        var kept = bakes;
        List<LeftOutBakes> aside = [];
        foreach (var exclusion in Exclusions)
        {
            kept = exclusion.LeaveOut(kept, aside);
        }

        var timed = kept.Count(bake => bake[BakeColumns.Mix] is not null);
        CountsMixing = timed >= TermSelection.LeastShareLogged * kept.Count;
        WhyNoMixing = CountsMixing ? "" : $"Mixing time is logged in {timed} of {kept.Count} bakes, too few to count it.";
        if (CountsMixing)
        {
            kept = new Exclusion("no mixing time", bake => bake[BakeColumns.Mix] is null).LeaveOut(kept, aside);
        }

        (Kept, LeftOut) = (kept, aside);
    }

    /// <summary>The bakes that have all that the model needs.</summary>
    public IReadOnlyList<Bake> Kept { get; }

    /// <summary>The others, by reason.</summary>
    public IReadOnlyList<LeftOutBakes> LeftOut { get; }

    /// <summary>Whether the model counts minutes of mixing; without bakes it does.</summary>
    public bool CountsMixing { get; }

    /// <summary>Why it doesn't, one sentence; empty if it does.</summary>
    public string WhyNoMixing { get; }

    /// <summary>A value for each cause of the model, counted from its centre.</summary>
    public double[] Row(double waterC, double flourC, double roomC, double mixMin) =>
    [
        1,
        waterC - DoughCause.Water.Centre,
        flourC - DoughCause.Flour.Centre,
        roomC - DoughCause.Room.Centre,
        CountsMixing ? mixMin - DoughCause.Mixing.Centre : 0,
    ];

    /// <summary>The row of a bake that is kept.</summary>
    public double[] Row(Bake bake) => Row(
        bake[BakeColumns.WaterTemp]!.Value,
        bake[BakeColumns.FlourTemp]!.Value,
        bake[BakeColumns.RoomTemp]!.Value,
        bake[BakeColumns.Mix] ?? DoughCause.Mixing.Centre);

    /// <summary>The values of a cause among the bakes kept.</summary>
    public double[] ValuesOf(DoughCause cause) => [.. Kept.Select(bake => bake[cause.Column!]).Known()];
}
