using CsvHelper;
using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>Holds the values of a row against what is usual and possible, and against each other.</summary>
/// <remarks>
/// What can't be is taken out of the row: the cell counts as missing. What is only unusual stays. A row with nothing
/// odd in it costs a few comparisons.
/// </remarks>
internal sealed class Plausibility
{
    private static readonly UsualRange[] Usual = [.. UsualRanges.OfColumns];
    private static readonly RatioRange[] Yeast = [.. UsualRanges.Yeast];

    private static readonly double MilkWater = WaterContents.WholeMilk.Pct / 100;
    private static readonly double EggWater = WaterContents.WholeEgg.Pct / 100;

    private readonly LoafChecks _loaves;
    private readonly TimeChecks _times;
    private readonly RowRemarks _remarks;

    /// <summary>Makes the checks of a file.</summary>
    /// <param name="bindings">What its columns hold.</param>
    /// <param name="csv">The row as it is written, for the notices.</param>
    /// <param name="notices">Takes the notices.</param>
    public Plausibility(IReadOnlyList<ColumnBinding> bindings, CsvReader csv, NoticeLog notices)
    {
        _remarks = new RowRemarks(bindings, csv, notices);
        _loaves = new LoafChecks(_remarks);
        _times = new TimeChecks(_remarks);
    }

    /// <summary>Checks a row that has been read.</summary>
    public void Check(RowValues row)
    {
        foreach (var range in Usual)
        {
            var value = row.Quantities[range.Column.Index];
            if (value < range.Low || value > range.High)
            {
                Unusual(row, range, value);
            }
        }

        CheckDough(row);
        CheckWarmth(row);
        _loaves.Check(row);
        _times.Check(row);
    }

    private void CheckDough(RowValues row)
    {
        var values = row.Quantities;
        var fermented = 0.0;
        var wet = values[C.Water.Index];
        if (values[C.Preferment.Index] is > 0 and var preferment)
        {
            fermented = preferment / (1 + (values[C.PrefermentHydration.Index] / 100));
            wet += preferment - fermented;
        }

        var percent = 100 / (values[C.Flour.Index] + fermented);
        if (double.IsNaN(percent))
        {
            return;
        }

        var hydration = (wet + WaterOfOthers(values)) * percent;
        var salt = values[C.Salt.Index] * percent;
        if (hydration > UsualRanges.Hydration.High && salt > UsualRanges.Salt.High)
        {
            FlourOff(row, hydration, salt);
            return;
        }

        _remarks.Check(row, UsualRanges.Hydration, hydration);
        _remarks.Check(row, UsualRanges.Salt, salt);
        _remarks.Check(row, UsualRanges.Sugar, values[C.Sugar.Index] * percent);
        _remarks.Check(row, UsualRanges.Fat, values[C.Fat.Index] * percent);
        _remarks.Check(row, UsualRanges.PrefermentedFlour, fermented * percent);
        if (row.Choices[C.YeastKind.Index] is >= 0 and var kind)
        {
            _remarks.Check(row, Yeast[kind], values[C.Yeast.Index] * percent);
        }
    }

    // Two slips in one row are rarer than one in the flour that both stand against.
    private void FlourOff(RowValues row, double hydration, double salt)
    {
        var cell = _remarks.Cell(row, C.Flour);
        _remarks.Refuse(row, C.Flour, Notices.FlourOff(cell.At, cell.Header, cell.Text, hydration, salt));
    }

    // A milk dough may have hardly any water poured in.
    private static double WaterOfOthers(double[] values)
    {
        var milk = values[C.Milk.Index];
        var egg = values[C.Egg.Index];
        return (milk > 0 ? milk * MilkWater : 0) + (egg > 0 ? egg * EggWater : 0);
    }

    // Water that is doubted by itself is not held against the dough as well: one fault, one notice.
    private void CheckWarmth(RowValues row)
    {
        var dough = row.Quantities[C.DoughTemp.Index];
        var water = row.Quantities[C.WaterTemp.Index];
        if (water > UsualRanges.HotWaterC)
        {
            return;
        }

        var balance = RoughHeatBalance.DoughC(row, water);
        if (Math.Abs(dough - balance) > UsualRanges.FurthestFromBalanceC)
        {
            var cell = _remarks.Cell(row, C.DoughTemp);
            _remarks.Add(Notices.DoughTempOff(cell.At, cell.Header, cell.Text, dough, balance));
        }
    }

    private void Unusual(RowValues row, UsualRange range, double value)
    {
        var cell = _remarks.Cell(row, range.Column);
        if (WrittenCelsius.Fahrenheit(cell.Binding, cell.Text, range) is { } asFahrenheit && FitsBetter(row, range.Column, value, asFahrenheit))
        {
            _remarks.Add(Notices.FahrenheitPossible(cell.At, cell.Header, cell.Text, range, value, asFahrenheit));
        }
        else if (range.Column == C.WaterTemp && value > UsualRanges.HotWaterC)
        {
            _remarks.Add(Notices.WaterHot(cell.At, cell.Header, cell.Text, value));
        }
        else
        {
            _remarks.Add(Notices.ValueUnusual(cell.At, cell.Header, cell.Text, range, value));
        }
    }

    // Water may be hot as well as cold; what came of it, the dough, tells which.
    private static bool FitsBetter(RowValues row, QuantityColumn column, double value, double other)
    {
        if (column != C.WaterTemp)
        {
            return true;
        }

        var dough = row.Quantities[C.DoughTemp.Index];
        return Math.Abs(RoughHeatBalance.DoughC(row, other) - dough) < Math.Abs(RoughHeatBalance.DoughC(row, value) - dough);
    }
}
