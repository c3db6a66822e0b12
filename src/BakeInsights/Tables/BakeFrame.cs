using Microsoft.Data.Analysis;

namespace BakeInsights;

/// <summary>Bakes as a data frame, for those who want to go on in their own way. One way only: nothing is read back.</summary>
public static class BakeFrame
{
    /// <summary>
    /// A row for each bake, with <c>bake_id</c>, <c>baked_on</c> and a column for each measure of
    /// <see cref="Measures.All"/> in its canonical unit; null where the journal lacks it. Where the flour of any bake is
    /// uncertain, each measure that this moves is followed by its standard deviation, <c>hydration_pct_sd</c>: see
    /// <see cref="Measure.SdOf"/>, also on how the errors go together.
    /// </summary>
    public static DataFrame ToDataFrame(this IEnumerable<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        var rows = bakes.ToList();
        var days = rows.Select(bake => bake.BakedOn.ToDateTime(TimeOnly.MinValue));
        DataFrameColumn[] columns =
        [
            new StringDataFrameColumn(BakeColumns.Id.Name, rows.Select(bake => bake.Id)),
            new DateTimeDataFrameColumn(BakeColumns.BakedOn.Name, days),
            .. Measures.All.SelectMany(measure => ColumnsOf(measure, rows)),
        ];
        return new DataFrame(columns);
    }

    private static IEnumerable<DataFrameColumn> ColumnsOf(Measure measure, IReadOnlyList<Bake> rows)
    {
        yield return new DoubleDataFrameColumn(measure.Name, rows.Select(measure.Of));
        if (rows.Any(bake => measure.SdOf(bake) > 0))
        {
            yield return new DoubleDataFrameColumn(measure.Name + "_sd", rows.Select(measure.SdOf));
        }
    }
}
