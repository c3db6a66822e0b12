namespace BakeInsights;

/// <summary>What a cup weighs in the journal that is being read: as its own cups weighed, else as published.</summary>
internal sealed class CupWeights
{
    private readonly WeighedCups _weighed;
    private readonly Dictionary<(FlourMeasure Method, string Baker), HouseholdWeight?> _flour = [];

    /// <summary>Takes the cups that were weighed for the journal; there may be none.</summary>
    public CupWeights(IReadOnlyList<CupWeighing> weighings) => _weighed = new WeighedCups(weighings);

    /// <summary>Whether the baker of a row is asked for: then the reader has to have read who that was.</summary>
    public bool AsksForBaker => _weighed.Any;

    /// <summary>
    /// The weight of a cup of an ingredient in a row; null where none is known. A cup of flour without a word on how
    /// it was filled is marked so in the row itself: later steps ask the row.
    /// </summary>
    public HouseholdWeight? Of(ColumnBinding binding, string text, RowValues row, NoticeLog notices)
    {
        var column = (QuantityColumn)binding.Column!;
        if (column != BakeColumns.Flour)
        {
            return OfOther(column);
        }

        var place = BakeColumns.FlourMeasure.Index;
        if (row.Choices[place] > (int)FlourMeasure.Weighed)
        {
            return OfFlour(row);
        }

        row.Choices[place] = (int)FlourMeasure.CupUnknown;
        var unknown = OfFlour(row)!;
        notices.Add(Notices.FlourCupMethodMissing(new SourceLine(row.File, row.Line), binding.Header, text, unknown));
        return unknown;
    }

    /// <summary>
    /// Notes in the row what its cups of flour weighed, where the journal's own cups say so; grams that were once
    /// cups count too.
    /// </summary>
    public void Note(RowValues row)
    {
        if (AsksForBaker && row.Choices[BakeColumns.FlourMeasure.Index] > (int)FlourMeasure.Weighed)
        {
            row.FlourCup = OfFlour(row);
        }
    }

    /// <summary>Says which weights are taken for the columns whose name ends in a cup or a spoon.</summary>
    public void Remark(IReadOnlyList<ColumnBinding> bindings, SourceLine at, NoticeLog notices)
    {
        foreach (var binding in bindings)
        {
            if (binding.Unit?.Dimension != Dimension.Volume || binding.Column is not QuantityColumn { Dimension: Dimension.Mass } column)
            {
                continue;
            }

            if (column == BakeColumns.Flour)
            {
                notices.Add(Notices.FlourByCup(at, binding.Header));
            }
            else if (OfOther(column) is { } weight)
            {
                notices.Add(Notices.CupWeight(at, binding.Header, weight));
            }
        }
    }

    private HouseholdWeight? OfOther(QuantityColumn column) => _weighed.Of(column.Stem) ?? HouseholdWeights.Of(column.Stem);

    private HouseholdWeight? OfFlour(RowValues row)
    {
        var method = (FlourMeasure)row.Choices[BakeColumns.FlourMeasure.Index];
        if (!AsksForBaker)
        {
            return HouseholdWeights.OfFlour(method);
        }

        var key = (method, row.Texts[BakeColumns.Baker.Index] ?? "");
        if (!_flour.TryGetValue(key, out var weight))
        {
            weight = _weighed.OfFlour(key.method, key.Item2) ?? HouseholdWeights.OfFlour(method);
            _flour[key] = weight;
        }

        return weight;
    }
}
