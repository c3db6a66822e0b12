namespace BakeInsights;

/// <summary>What a cup weighs in the journal that is being read.</summary>
internal sealed class CupWeights
{
    /// <summary>
    /// The weight of a cup of an ingredient in a row; null where none is known. A cup of flour without a word on how
    /// it was filled is marked so in the row itself: later steps ask the row.
    /// </summary>
    public HouseholdWeight? Of(ColumnBinding binding, string text, RowValues row, NoticeLog notices)
    {
        var column = (QuantityColumn)binding.Column!;
        if (column != BakeColumns.Flour)
        {
            return HouseholdWeights.Of(column.Stem);
        }

        var measure = row.Choices[BakeColumns.FlourMeasure.Index];
        if (measure >= 0 && HouseholdWeights.OfFlour((FlourMeasure)measure) is { } weight)
        {
            return weight;
        }

        var unknown = HouseholdWeights.OfFlour(FlourMeasure.CupUnknown)!;
        notices.Add(Notices.FlourCupMethodMissing(new SourceLine(row.File, row.Line), binding.Header, text, unknown));
        row.Choices[BakeColumns.FlourMeasure.Index] = (int)FlourMeasure.CupUnknown;
        return unknown;
    }
}
