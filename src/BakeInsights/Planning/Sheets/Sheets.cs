using System.Collections.Immutable;
using BakeInsights.Inference;
using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>Works out what the sheets of a day say.</summary>
public static class Sheets
{
    /// <summary>Water boils here, in °C, at sea level: no kitchen pours it warmer.</summary>
    public const double BoilingC = 100;

    /// <summary>The room that is taken where neither wish nor journal names one, in °C (common practice, no source).</summary>
    public const double UsualRoomC = 21;

    private const double MostHandlingLossPct = 10;

    private static readonly Caution[] OnASheet =
    [
        CautionCatalogue.RawFlour, CautionCatalogue.Allergens, CautionCatalogue.WarmHolds, CautionCatalogue.Burns,
        CautionCatalogue.Cutting, CautionCatalogue.Cups,
    ];

    /// <summary>A sheet for each bake that is wished for.</summary>
    /// <param name="journal">The journal: its bakes say the typical dough, how warm doughs get, and how long they take.</param>
    /// <param name="form">The journal's columns, for the blanks; null for sheets without blanks.</param>
    /// <param name="wishes">What is asked for.</param>
    /// <param name="units">The units of blanks and of remarks.</param>
    /// <returns>The sheets in the order of the wishes, or the wish that can't be met, with what can.</returns>
    public static Attempt<IReadOnlyList<Sheet>> Of(Journal journal, BakeForm? form, SheetWishes wishes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(journal);
        ArgumentNullException.ThrowIfNull(wishes);
        if (SheetChecks.Objection(wishes, units) is { } objection)
        {
            return objection;
        }

        if (!SheetFormula.Find(journal, wishes.Formula).TryGet(out var formula, out var noFormula))
        {
            return noFormula;
        }

        if (!KitchenDoughTemperature.Learn(journal.Bakes).TryGet(out var kitchen, out var noKitchen))
        {
            return noKitchen;
        }

        var times = new SheetTimes(journal.Bakes);
        List<Sheet> sheets = [];
        foreach (var bake in wishes.Bakes.DefaultIfEmpty(new SheetBake()))
        {
            if (!One(new(journal, form, wishes, units, formula, kitchen, times), bake).TryGet(out var sheet, out var problem))
            {
                return bake.Name.Length == 0 ? problem : problem with { Message = $"{bake.Name}: {problem.Message}" };
            }

            sheets.Add(sheet);
        }

        return sheets.ToImmutableArray();
    }

    private static Attempt<Sheet> One(Plan plan, SheetBake bake)
    {
        var usualYeast = TypicalDough.UsualYeast(plan.Journal.Bakes) ?? YeastKind.Instant;
        if (!plan.Formula.With(bake, usualYeast).TryGet(out var unscaled, out var problem))
        {
            return problem;
        }

        var pieces = PiecesOf(plan, unscaled);
        var formula = pieces is null ? unscaled : unscaled.ForDough(pieces.DoughG);
        if (SheetChecks.TooManyCups(formula, plan.Wishes.Cups) is { } tooMany)
        {
            return tooMany;
        }

        var dough = bake.Dough ?? Temperature.FromC(plan.Times.Typical[Measures.DoughTemperature] ?? ModelAnswer.CentreTemperatureC);
        var water = WaterFor(plan, formula, dough);
        if (water.TryGet(out var found, out _) && SheetChecks.TooHot(found, plan.Units, plan.Kitchen) is { } tooHot)
        {
            return tooHot;
        }

        // The dough that is planned with is the one that the kitchen reaches.
        var planned = found is { Plan.IsReached: false } ? Temperature.FromC(found.Dough.Estimate) : dough;
        var settings = SettingsOf(plan, formula, planned);
        var (rise, proof) = (plan.Times.Rise(settings, plan.Units), plan.Times.Proof(settings));
        var day = new BakingDay(rise.Time, proof.Time, plan.Times.Baking);
        return SheetDays.Of(
            day,
            plan.Wishes,
            (start, finish, riseMin) => Remedies(new(day, start, finish, plan.Times, settings), riseMin, formula, warmer => WaterFor(plan, formula, warmer)),
            plan.Units).Select(hours => new Sheet
        {
            Name = bake.Name,
            Journal = plan.Journal.Name,
            FormulaName = plan.Formula.Name,
            Formula = formula,
            FormulaBakes = plan.Formula.Bakes,
            Pieces = pieces,
            Filling = plan.Wishes.Cups,
            Cups = plan.Wishes.Cups is { } filling ? new HouseholdFormula(formula, filling) : null,
            Dough = dough,
            Water = water,
            Rise = rise,
            LooksMin = LookSpacing.Between(rise.Time.SoonestMin, rise.Time.LatestMin),
            ChangePctPerDegree = plan.Times.ChangePctPerDegree,
            Proof = proof,
            Day = hours,
            Blanks = BlanksOf(plan, bake),
            Cautions = CautionsOf(plan, formula, planned, day),
        });
    }

    private static IReadOnlyList<SheetRemedy> Remedies(
        SheetRemedies remedies, double riseMin, Formula formula, Func<Temperature, Attempt<NeededWater>> waterFor) =>
    [
        .. new SheetRemedy?[]
        {
            remedies.Yeast(riseMin, formula),
            remedies.Warmth(riseMin, warmer => waterFor(warmer).Match<NeededWater?>(water => water, _ => null)),
        }.OfType<SheetRemedy>(),
    ];

    private static Attempt<NeededWater> WaterFor(Plan plan, Formula formula, Temperature dough)
    {
        var grams = formula.Ingredients.Where(one => one.Role == IngredientRole.Water).Sum(one => one.Grams);
        if (grams <= 0)
        {
            return new FitProblem(
                FitProblemKind.ImpossibleValue, [C.Water.Name], "The formula has no water to pour.", "Warm or cool its other liquid by the same rule of thumb.");
        }

        var room = plan.Wishes.Kitchen.Room ?? Temperature.FromC(plan.Times.MedianOf(C.RoomTemp) ?? UsualRoomC);
        return plan.Kitchen.WaterFor(dough, new(plan.Wishes.Kitchen.Flour ?? room, room), plan.Wishes.Kitchen.WaterFor(grams), grams);
    }

    private static DoughSettings SettingsOf(Plan plan, Formula formula, Temperature dough) => plan.Times.Typical
        .With(Measures.DoughTemperature, dough.C)
        .With(Measures.Hydration, formula.HydrationPct)
        .With(Measures.Yeast, formula.YeastAsInstantPct)
        .With(Measures.Salt, formula.PctOfFlour(IngredientRole.Salt))
        .With(Measures.Sugar, formula.PctOfFlour(IngredientRole.Sugar));

    private static SheetPieces? PiecesOf(Plan plan, Formula formula)
    {
        var loss = plan.Journal.Bakes.Select(HandlingLossPct).Known().ToList() is { Count: > 0 } known
            ? Math.Clamp(Quantiles.Median(known), 0, MostHandlingLossPct)
            : SheetPieces.UsualLossPct;
        var usual = plan.Journal.Bakes.Select(bake => bake[C.Dough] / bake[C.LoafCount]).Known().Where(grams => grams > 0).ToList();
        var doughG = formula.TotalG * (1 - (loss / 100));
        return (plan.Wishes.Loaves, plan.Wishes.PieceG) switch
        {
            ({ } count, { } piece) => new(count, piece, loss),
            ({ } count, null) => new(count, usual.Count > 0 ? Quantiles.Median(usual) : doughG / count, loss),
            (null, { } piece) => new(plan.Times.MedianOf(C.LoafCount) is { } count ? (int)Math.Round(count) : 1, piece, loss),
            _ when plan.Times.MedianOf(C.LoafCount) is { } count => new((int)Math.Round(count), doughG / Math.Round(count), loss),
            _ => null,
        };
    }

    // What was weighed in and did not come to the oven.
    private static double? HandlingLossPct(Bake bake)
    {
        QuantityColumn[] weighed = [C.Flour, C.Water, C.Salt, C.Yeast, C.Sugar, C.Fat, C.Milk, C.Egg, C.Honey, C.Preferment];
        var inG = weighed.Sum(column => bake[column] ?? 0);
        return bake[C.Dough] is { } outG && bake[C.Flour] > 0 && bake[C.Water] > 0 && inG > 0 ? 100 * (1 - (outG / inG)) : null;
    }

    private static IReadOnlyList<SheetBlank> BlanksOf(Plan plan, SheetBake bake) => plan.Form is null ? [] : SheetBlank.Of(
        plan.Form,
        plan.Units,
        new Dictionary<JournalColumn, string> { [C.Formula] = plan.Formula.Name, [C.Group] = bake.Name });

    private static IReadOnlyList<Caution> CautionsOf(Plan plan, Formula formula, Temperature dough, BakingDay day)
    {
        // A sheet hangs where others bake and eat along.
        var room = plan.Wishes.Kitchen.Room ?? dough;
        var called = CautionCatalogue.For(new()
        {
            Formula = formula,
            WarmMinutes = (day.FirstRise + day.Dividing + day.Shaping + day.Proof).LatestMin,
            WarmestPlace = room > dough ? room : dough,
            WithOthers = true,
            FlourByCup = plan.Wishes.Cups is not (null or FlourMeasure.Weighed),
        });
        return [.. OnASheet.Where(called.Contains)];
    }

    private sealed record Plan(
        Journal Journal, BakeForm? Form, SheetWishes Wishes, UnitSystem Units, SheetFormula Formula, KitchenDoughTemperature Kitchen, SheetTimes Times);
}
