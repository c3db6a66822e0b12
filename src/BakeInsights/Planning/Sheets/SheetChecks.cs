using System.Globalization;
using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Wishes that no kitchen can meet, each with what is possible.</summary>
internal static class SheetChecks
{
    // The range that the journal's own column takes for a dough.
    private static readonly (Temperature Low, Temperature High) Doughs =
        (Temperature.FromC(BakeColumns.DoughTemp.Low), Temperature.FromC(BakeColumns.DoughTemp.High));

    private const int MostLoaves = 1_000;
    private const double MostPieceG = 10_000;
    private const double MostPct = 150;

    /// <summary>The first wish that can't be met whatever the journal says; null when there is none.</summary>
    public static FitProblem? Objection(SheetWishes wishes, UnitSystem units)
    {
        var kitchen = wishes.Kitchen;
        var freezing = Temperature.FromC(0);
        return wishes.Loaves is { } count and not (>= 1 and <= MostLoaves)
                ? Problem("loaves", $"A dough can't be divided into {Text(count)} loaves.", $"Ask for 1 to {Text(MostLoaves)}.")
            : wishes.PieceG is { } piece && !(piece > 0 && piece <= MostPieceG)
                ? Problem("piece_g", $"A piece can't weigh {Text(piece)} g.", $"Give more than 0 and at most {Text(MostPieceG)} g.")
            : Outside(kitchen.Room, BakeColumns.RoomTemp) is { } room
                ? Problem("kitchen", $"A room of {room.Text(units)} is none to bake in.", RangeOf(BakeColumns.RoomTemp, units))
            : Outside(kitchen.Flour, BakeColumns.FlourTemp) is { } flour
                ? Problem("flour_temp", $"A flour of {flour.Text(units)} is none to bake with.", RangeOf(BakeColumns.FlourTemp, units))
            : kitchen.Cold < freezing || kitchen.Hot < kitchen.Cold || kitchen.Hot.C > Sheets.BoilingC
                ? Problem("taps", $"Taps of {kitchen.Cold.Text(units)} and {kitchen.Hot.Text(units)} can't be.",
                    $"Give the cold one first: from {freezing.Text(units)}, and the hot one up to {Temperature.FromC(Sheets.BoilingC).Text(units)}.")
            : kitchen.IceG < 0
                ? Problem("ice", $"There can't be {Text(kitchen.IceG.Value)} g of ice.", "Give 0 for none.")
            : wishes.Bakes.Select(bake => Objection(bake, units)).FirstOrDefault(problem => problem is not null);
    }

    /// <summary>What to say of more cups than anyone fills; null when there are not so many.</summary>
    public static FitProblem? TooManyCups(Formula formula, FlourMeasure? cups)
    {
        // The lightest cup of any ingredient with a published weight is sifted flour's or light rye's, about 100 g.
        const double lightestCupG = 100;
        var most = HouseholdAmount.MostCups * lightestCupG;
        return cups is not null && formula.Ingredients.FirstOrDefault(one => one.Grams > most) is { } heavy
            ? Problem(
                "cups",
                $"{Text(Math.Round(heavy.Grams))} g of {heavy.Name} are too much to measure by the cup.",
                $"Weigh it: leave --cups away, or ask for less than {Text(most)} g.")
            : null;
    }

    /// <summary>What to say of water that would have to boil; null when it need not.</summary>
    public static FitProblem? TooHot(NeededWater water, UnitSystem units, KitchenDoughTemperature kitchen)
    {
        if (water.WaterC.Value <= Sheets.BoilingC)
        {
            return null;
        }

        var warmest = kitchen.At(KitchenWater.WarmestForYeast, water.Conditions).Estimate;
        return Problem(
            "dough_temp",
            $"A dough of {water.Target.Text(units)} would take water of {Temperature.FromC(water.WaterC.Value).Text(units)}, above boiling.",
            $"Water of {KitchenWater.WarmestForYeast.Text(units)}, the warmest for yeast, brings it to {Temperature.FromC(warmest).Text(units)}: "
                + "ask for that or less, or warm room and flour.");
    }

    private static FitProblem? Objection(SheetBake bake, UnitSystem units)
    {
        if (bake.Dough is { } dough && (dough < Doughs.Low || dough > Doughs.High))
        {
            return Named(bake, Problem("dough_temp", $"A dough of {dough.Text(units)} is none.", RangeOf(BakeColumns.DoughTemp, units)));
        }

        (string Name, double? Value)[] parts =
            [("hydration", bake.HydrationPct), ("yeast", bake.YeastPct), ("salt", bake.SaltPct), ("sugar", bake.SugarPct)];
        var bad = parts.FirstOrDefault(part => part.Value is { } value && !(value >= 0 && value <= MostPct));
        return bad.Value is { } pct
            ? Named(bake, Problem(bad.Name, $"A {bad.Name} of {Text(pct)} % of the flour can't be.", $"Give 0 to {Text(MostPct)} %."))
            : null;
    }

    private static FitProblem Named(SheetBake bake, FitProblem problem) =>
        bake.Name.Length == 0 ? problem : problem with { Message = $"{bake.Name}: {problem.Message}" };

    private static Temperature? Outside(Temperature? asked, QuantityColumn column) =>
        asked is { } temperature && (temperature.C < column.Low || temperature.C > column.High) ? temperature : null;

    private static string RangeOf(QuantityColumn column, UnitSystem units) =>
        $"Give {Temperature.FromC(column.Low).Text(units)} to {Temperature.FromC(column.High).Text(units)}.";

    private static string Text(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static FitProblem Problem(string wish, string message, string remedy) =>
        new(FitProblemKind.ImpossibleValue, [wish], message, remedy);
}
