namespace BakeInsights.Cli;

/// <summary>What <c>sheet --json</c> prints; all in metric units, clock times in minutes after midnight.</summary>
internal sealed record SheetsJson(IReadOnlyList<SheetJson> Sheets)
{
    public static SheetsJson From(IReadOnlyList<Sheet> sheets) => new([.. sheets.Select(SheetJson.From)]);
}

/// <summary>One sheet.</summary>
internal sealed record SheetJson(
    string Name,
    string Journal,
    SheetFormulaJson Formula,
    double DoughTempC,
    SheetWaterJson? Water,
    string? WaterProblem,
    SheetTimeJson Rise,
    SheetTimeJson Proof,
    IReadOnlyList<double> LooksMin,
    EstimateJson? RiseChangePctPerC,
    SheetDayJson Day,
    IReadOnlyList<SheetBlank> Blanks,
    IReadOnlyList<string> Cautions)
{
    public static SheetJson From(Sheet sheet) => new(
        sheet.Name,
        sheet.Journal,
        SheetFormulaJson.From(sheet),
        sheet.Dough.C,
        sheet.Water.Match<SheetWaterJson?>(SheetWaterJson.From, _ => null),
        sheet.Water.Match<string?>(_ => null, problem => $"{problem.Message} {problem.Remedy}"),
        SheetTimeJson.From(sheet.Rise),
        SheetTimeJson.From(sheet.Proof),
        sheet.LooksMin,
        EstimateJson.From(sheet.ChangePctPerDegree),
        SheetDayJson.From(sheet.Day),
        sheet.Blanks,
        [.. sheet.Cautions.Select(caution => $"{caution.Topic}. {caution.Text}"), CautionCatalogue.Deference]);
}

/// <summary>What is weighed or filled.</summary>
internal sealed record SheetFormulaJson(
    string Name,
    int MedianOfBakes,
    double DoughG,
    double HydrationPct,
    SheetPieces? Pieces,
    IReadOnlyList<SheetLineJson> Lines,
    FlourMeasure? Cups,
    double? FlourSpreadPct,
    double? LowHydrationPct,
    double? HighHydrationPct)
{
    public static SheetFormulaJson From(Sheet sheet) => new(
        sheet.FormulaName,
        sheet.FormulaBakes,
        sheet.Formula.TotalG,
        sheet.Formula.HydrationPct,
        sheet.Pieces,
        [.. sheet.Formula.Lines.Select((line, place) => SheetLineJson.From(line, sheet.Cups?.Lines[place]))],
        sheet.Filling,
        sheet.Cups?.FlourSpreadPct,
        sheet.Cups?.LowHydrationPct,
        sheet.Cups?.HighHydrationPct);
}

/// <summary>One ingredient.</summary>
internal sealed record SheetLineJson(string Ingredient, double G, double PctOfFlour, string? ByTheCup, double? RoundingPct)
{
    public static SheetLineJson From(FormulaLine line, HouseholdLine? byCup) =>
        new(line.Name, line.Grams, line.PctOfFlour, byCup?.Amount?.Text, byCup?.Amount?.RoundingPct);
}

/// <summary>The water.</summary>
internal sealed record SheetWaterJson(
    EstimateJson C, double ReachedC, bool IsReached, double ColdG, double HotG, double IceG, EstimateJson DoughC, IReadOnlyList<string> Warnings)
{
    public static SheetWaterJson From(NeededWater water) => new(
        EstimateJson.From(water.WaterC)!,
        water.Plan.Reached.C,
        water.Plan.IsReached,
        water.Plan.ColdG,
        water.Plan.HotG,
        water.Plan.IceG,
        new(water.Dough.Estimate, water.Dough.Prediction.Low, water.Dough.Prediction.High),
        water.Warnings(UnitSystem.Metric));
}

/// <summary>How long something takes.</summary>
internal sealed record SheetTimeJson(double UsualMin, double SoonestMin, double LatestMin, int Bakes, bool IsPredicted, IReadOnlyList<string> Remarks)
{
    public static SheetTimeJson From(SheetRise time) =>
        new(time.Time.UsualMin, time.Time.SoonestMin, time.Time.LatestMin, time.Bakes, time.IsPredicted, time.Remarks);
}

/// <summary>The day.</summary>
internal sealed record SheetDayJson(
    bool HasClock, double StartMin, IReadOnlyList<TimetableRow> Rows, IReadOnlyList<double> LooksMin, double AllLateMin, SheetFitJson? Fit)
{
    public static SheetDayJson From(SheetDay day) => new(
        day.HasClock, day.Table.StartMin, day.Table.Rows, day.Table.LooksMin, day.Table.AllLateMin, day.Fit is null ? null : SheetFitJson.From(day));
}

/// <summary>Whether the day fits, and what would make it.</summary>
internal sealed record SheetFitJson(
    bool Fits, double OverMin, double? RiseThatFitsMin, double? YeastG, double? YeastPct, double? DoughTempC, double? WaterTempC)
{
    public static SheetFitJson From(SheetDay day)
    {
        var yeast = day.Remedies.OfType<YeastRemedy>().FirstOrDefault();
        var warmth = day.Remedies.OfType<WarmthRemedy>().FirstOrDefault();
        return new(
            day.Fit!.Fits, day.Fit.OverMin, day.Fit.RiseThatFitsMin, yeast?.YeastG, yeast?.YeastPct, warmth?.Dough.C, warmth?.Water.Plan.Reached.C);
    }
}
