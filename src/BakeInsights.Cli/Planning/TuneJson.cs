namespace BakeInsights.Cli;

/// <summary>What <c>tune --json</c> prints. Chances go from 0 to 1.</summary>
internal sealed record TuneJson(
    JournalJson Journal,
    IReadOnlyList<GoalJson> Wishes,
    bool Change,
    double ChanceOfBetter,
    TunedFormulaJson House,
    TunedFormulaJson Best,
    TunedFormulaJson? Safe,
    IReadOnlyList<TuneStepJson> Steps,
    EstimateJson? ResidualCorrelation,
    WaterJson? Water)
{
    private const double FlourG = 1_000;

    public static TuneJson From(JournalReading reading, TuneAnswer answer)
    {
        TunedFormulaJson Formula(TunedFormula formula) => TunedFormulaJson.From(formula, answer.Settings);
        return new(
            JournalJson.From(reading),
            [
                .. answer.Costs.Select(cost => new GoalJson(
                    cost.Goal.Result.Name, cost.Goal.Low, cost.Goal.High, cost.BestAlone, cost.ChanceWithout, cost.SafeBound)),
            ],
            answer.IsChange,
            answer.ChanceOfBetter,
            Formula(answer.House),
            Formula(answer.Best),
            answer.Safe is { } safe ? Formula(safe) : null,
            [.. answer.Steps.Select(step => new TuneStepJson(step.Setting.Name, step.Change, step.Formula.Chance.Value, step.Formula.IsBaked))],
            EstimateJson.From(answer.Correlation),
            WaterJson.From(answer.WaterFor(FlourG * (answer.Advised.Settings[Measures.Hydration] ?? ModelAnswer.CentreHydrationPct) / 100)));
    }
}

/// <summary>A wish and what it costs.</summary>
internal sealed record GoalJson(string Result, double? Low, double? High, double BestAlone, double? OthersWithout, double? SafeBound);

/// <summary>A formula with its chances, those of the wishes in their order.</summary>
internal sealed record TunedFormulaJson(
    IReadOnlyDictionary<string, double> Settings, EstimateJson Chance, IReadOnlyList<double> Chances, bool Baked)
{
    public static TunedFormulaJson From(TunedFormula formula, IReadOnlyList<Measure> settings) => new(
        settings.ToDictionary(setting => setting.Name, setting => formula.Settings[setting]!.Value),
        EstimateJson.From(formula.Chance)!,
        formula.Goals,
        formula.IsBaked);
}

/// <summary>A step away from the formula advised; its chance is a guess where it was not baked.</summary>
internal sealed record TuneStepJson(string Setting, double Change, double Chance, bool Baked);

/// <summary>The water of the dough, for 1,000 g of flour.</summary>
internal sealed record WaterJson(EstimateJson WaterC, double ColdG, double HotG, double IceG, bool Reached)
{
    public static WaterJson? From(Inference.Attempt<NeededWater>? water) => water?.Match<WaterJson?>(
        found => new(EstimateJson.From(found.WaterC)!, found.Plan.ColdG, found.Plan.HotG, found.Plan.IceG, found.Plan.IsReached),
        _ => null);
}

/// <summary>What <c>tune --ready-by --json</c> prints.</summary>
internal sealed record ReadyByJson(
    JournalJson Journal, double Minutes, int Used, PointJson AsItIs, NeededJson? DoughTempC, NeededJson? YeastInstantPct, WaterJson? Water)
{
    private const double FlourG = 1_000;

    public static ReadyByJson From(JournalReading reading, ReadyByAnswer answer) => new(
        JournalJson.From(reading),
        answer.Minutes,
        answer.Used,
        PointJson.From(answer.AsItIs),
        NeededJson.From(answer.DoughTemperature),
        NeededJson.From(answer.Yeast),
        WaterJson.From(answer.WaterFor(FlourG * (answer.House[Measures.Hydration] ?? ModelAnswer.CentreHydrationPct) / 100)));
}

/// <summary>What to expect, in minutes: on average, and of one more bake.</summary>
internal sealed record PointJson(double Estimate, double Low, double High, double OneLow, double OneHigh)
{
    public static PointJson From(CurvePoint point) =>
        new(point.Estimate, point.Mean.Low, point.Mean.High, point.Prediction.Low, point.Prediction.High);
}

/// <summary>A setting that is needed.</summary>
internal sealed record NeededJson(EstimateJson OnAverage, bool Baked, double? NineInTen)
{
    public static NeededJson? From(NeededSetting? needed) =>
        needed is null ? null : new(EstimateJson.From(needed.OnAverage)!, needed.IsBaked, needed.Safe);
}
