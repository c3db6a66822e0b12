using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>
/// Doubts values that one moved decimal point would bring to the journal's own median, even where they are usual in
/// other kitchens.
/// </summary>
/// <remarks>
/// Looked at are temperatures, durations, and the water, salt and yeast as shares of flour: what a kitchen keeps at one
/// size, whatever the batch. Richness is a choice of the formula, and cold hours and preferments change time and yeast
/// tenfold by intent, so they are left alone. The thresholds are our own choice.
/// </remarks>
internal static class MedianSlips
{
    private const int FewestValues = 8;

    // A value is near the median within a factor of 1.25, or within three robust standard deviations of the logarithms.
    private const double NearAtLeast = 0.1;
    private const double DeviationsNear = 3;

    // Beyond a factor of 1.8 for "near" the column varies too much to tell a slip from a choice.
    private const double NearAtMost = 0.25;

    // Of a normal distribution, the standard deviation over the median absolute deviation.
    private const double SdOverMad = 1.4826;

    // What more bakes than these have is a second way of working, not a slip.
    private const double MostSlipsShare = 0.02;

    private const string ShareUnit = " % of flour";

    // What is said of the same cell already, without a cause.
    private static readonly string[] LesserCodes = ["VALUE_UNUSUAL", "RATIO_UNUSUAL", "RISE_LONG"];

    private static readonly QuantityColumn[] OwnValues =
    [
        C.PrefermentHydration, C.RoomTemp, C.FlourTemp, C.WaterTemp, C.PrefermentTemp, C.DoughTemp, C.RiseTemp, C.ProofTemp,
        C.OvenTemp, C.CoreTemp, C.Mix, C.Rise, C.Proof, C.Baking,
    ];

    private static readonly QuantityColumn[] SharesOfFlour = [C.Water, C.Salt, C.Yeast];

    /// <summary>Remarks on the bakes of a journal that is kept whole.</summary>
    public static void Remark(IReadOnlyList<RowValues> bakes, NoticeLog notices)
    {
        if (bakes.Count < FewestValues)
        {
            return;
        }

        foreach (var column in OwnValues)
        {
            Remark(bakes, column, row => row.Quantities[column.Index], Notices.UnitOf(column), notices);
        }

        foreach (var column in SharesOfFlour)
        {
            Remark(bakes, column, row => 100 * row.Quantities[column.Index] / row.Quantities[C.Flour.Index], ShareUnit, notices);
        }
    }

    private static void Remark(
        IReadOnlyList<RowValues> bakes, QuantityColumn column, Func<RowValues, double> valueOf, string unit, NoticeLog notices)
    {
        if (IsTight(bakes, valueOf))
        {
            return;
        }

        List<(RowValues Row, double Value)> found =
            [.. bakes.Where(row => Counts(row, column)).Select(row => (row, Value: valueOf(row))).Where(each => each.Value > 0)];
        if (found.Count < FewestValues || Middle(found) is not { } middle)
        {
            return;
        }

        var slips = found
            .Select(each => (each.Row, each.Value, Move: DecimalSlip.Of(move => IsNear(each.Value * move, middle))))
            .Where(each => each.Move is not null)
            .ToList();
        if (slips.Count <= Math.Max(1, MostSlipsShare * found.Count))
        {
            slips.ForEach(slip => Remark(slip.Row, column, slip.Value, slip.Move!.Value, middle.Median, unit, notices));
        }
    }

    private static void Remark(
        RowValues row, QuantityColumn column, double value, double move, double median, string unit, NoticeLog notices)
    {
        var lesser = notices.Notices.FirstOrDefault(notice =>
            notice.Line == row.Line
            && notice.File == row.File
            && LesserCodes.Contains(notice.Code)
            && HeaderReader.Names([notice.Column], C.Layout, column));
        var better = Notices.DecimalSlipPossible(row.Origin, column, row.Quantities[column.Index], value, median, value * move, unit);
        notices.Replace(lesser, lesser is null ? better : better with { Column = lesser.Column, Text = lesser.Text });
    }

    private static bool Counts(RowValues row, QuantityColumn column) =>
        !((column == C.Rise || column == C.Proof || column == C.Yeast) && row.Quantities[C.Cold.Index] > 0)
        && !(column == C.Yeast && row.Quantities[C.Preferment.Index] > 0);

    // Where the largest is not even this many times the smallest, no value is near ten medians, and there is nothing to
    // sort: so it is in most columns of most journals.
    private static bool IsTight(IReadOnlyList<RowValues> bakes, Func<RowValues, double> valueOf)
    {
        var (least, most) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i < bakes.Count; i++)
        {
            var value = valueOf(bakes[i]);
            if (value > 0)
            {
                least = Math.Min(least, value);
                most = Math.Max(most, value);
            }
        }

        return most < Math.Pow(10, 1 - NearAtMost) * least;
    }

    private static bool IsNear(double value, (double Median, double Near) middle) =>
        Math.Abs(Math.Log10(value / middle.Median)) <= middle.Near;

    // The median, and how far from it a value is near, in powers of ten; null where the values vary too much.
    private static (double Median, double Near)? Middle(List<(RowValues Row, double Value)> found)
    {
        var median = MedianOf([.. found.Select(each => each.Value)]);
        var deviation = MedianOf([.. found.Select(each => Math.Abs(Math.Log10(each.Value / median)))]);
        var near = Math.Max(NearAtLeast, DeviationsNear * SdOverMad * deviation);
        return near <= NearAtMost ? (median, near) : null;
    }

    private static double MedianOf(double[] values)
    {
        Array.Sort(values);
        return (values[(values.Length - 1) / 2] + values[values.Length / 2]) / 2;
    }
}
