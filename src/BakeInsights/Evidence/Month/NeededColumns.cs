using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>The columns that the month's questions and models need, those of the most questions first.</summary>
internal static class NeededColumns
{
    private const string Percentages = "rise time, loaf volume";
    private const string Friction = "friction factor";
    private const string Loss = "bake loss";

    private static readonly IReadOnlyList<(string Name, string Words, string Serves, Func<Bake, bool> IsMissing)> All =
    [
        Quantity(C.DoughTemp, "the dough's temperature after mixing", $"{Percentages}, {Friction}"),
        Quantity(C.Flour, "the flour", Percentages),
        Quantity(C.Water, "the water", Percentages),
        Quantity(C.Loaf, "the mean mass of a loaf", $"loaf volume, {Loss}"),
        Quantity(C.Rise, "the rise time", "rise time"),
        Quantity(C.Yeast, "the yeast", "rise time"),
        (C.YeastKind.Name, "the kind of yeast", "rise time", bake => bake[C.Yeast] is not null && bake.YeastKind is null),
        Quantity(C.Salt, "the salt", "rise time"),
        Quantity(C.LoafVolume, "the loaf's volume", "loaf volume"),
        Quantity(C.RoomTemp, "the room's temperature", Friction),
        Quantity(C.FlourTemp, "the flour's temperature", Friction),
        Quantity(C.WaterTemp, "the water's temperature", Friction),
        Quantity(C.Dough, "the mass of the dough", Loss),
        Quantity(C.LoafCount, "the number of loaves", Loss),
    ];

    /// <summary>Those that bakes lack, the most often lacking first.</summary>
    public static IReadOnlyList<MissingCells> MissingFrom(IReadOnlyList<Bake> bakes) =>
    [
        .. All.Select(column => new MissingCells(column.Name, column.Words, bakes.Count(column.IsMissing), column.Serves))
            .Where(missing => missing.Count > 0)
            .OrderByDescending(missing => missing.Count),
    ];

    private static (string Name, string Words, string Serves, Func<Bake, bool> IsMissing) Quantity(
        QuantityColumn column, string words, string serves) => (column.Name, words, serves, bake => bake[column] is null);
}
