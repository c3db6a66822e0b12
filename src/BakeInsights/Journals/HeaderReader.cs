namespace BakeInsights;

/// <summary>Finds out what each column of a file holds, from its header.</summary>
internal static class HeaderReader
{
    /// <summary>Binds the names of a header; remarks go to <paramref name="notices"/>.</summary>
    public static IReadOnlyList<ColumnBinding> Read(
        IReadOnlyList<string> headers, TableLayout layout, SourceLine at, NoticeLog notices)
    {
        var bindings = new List<ColumnBinding>();
        for (var i = 0; i < headers.Count; i++)
        {
            var binding = Bind(i, CellText.Unmarked(headers[i].Trim()), layout);
            var earlier = bindings.Find(other =>
                other.Header == binding.Header || (other.Column is not null && other.Column == binding.Column));
            if (earlier is not null)
            {
                notices.Add(Notices.ColumnTwice(at, binding.Header, earlier.Header));
                continue;
            }

            if (binding.Column is null)
            {
                notices.Add(Notices.ColumnUnknown(at, binding.Header));
            }

            bindings.Add(binding);
            RemarkOnCups(binding, at, notices);
        }

        RemarkOnYeastKind(bindings, at, notices);
        return bindings;
    }

    /// <summary>Whether a header names a column.</summary>
    public static bool Names(IReadOnlyList<string> headers, TableLayout layout, JournalColumn column) =>
        headers.Any(header => Bind(0, header.Trim(), layout).Column == column);

    /// <summary>How many names of a header are known columns.</summary>
    public static int Known(IReadOnlyList<string> headers, TableLayout layout) =>
        headers.Count(header => Bind(0, header.Trim(), layout).Column is not null);

    private static void RemarkOnCups(ColumnBinding binding, SourceLine at, NoticeLog notices)
    {
        if (binding.Column is not QuantityColumn { Dimension: Dimension.Mass } column
            || binding.Unit?.Dimension != Dimension.Volume)
        {
            return;
        }

        if (column == BakeColumns.Flour)
        {
            notices.Add(Notices.FlourByCup(at, binding.Header));
        }
        else if (HouseholdWeights.Of(column.Stem) is { } weight)
        {
            notices.Add(Notices.CupWeight(at, binding.Header, weight));
        }
    }

    private static void RemarkOnYeastKind(List<ColumnBinding> bindings, SourceLine at, NoticeLog notices)
    {
        if (bindings.Find(binding => binding.Column == BakeColumns.Yeast) is { } yeast
            && !bindings.Exists(binding => binding.Column == BakeColumns.YeastKind))
        {
            notices.Add(Notices.YeastKindMissing(at, yeast.Header, yeast.Header));
        }
    }

    private static ColumnBinding Bind(int index, string header, TableLayout layout)
    {
        foreach (var column in layout.Columns)
        {
            if (column is not QuantityColumn quantity)
            {
                if (header.Equals(column.Name, StringComparison.OrdinalIgnoreCase))
                {
                    return new(index, header, column, null);
                }
            }
            else if (UnitOf(header, quantity, out var unit))
            {
                return new(index, header, column, unit);
            }
        }

        return new(index, header, null, null);
    }

    private static bool UnitOf(string header, QuantityColumn column, out MeasureUnit? unit)
    {
        unit = null;
        if (!header.StartsWith(column.Stem, StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        var ending = header[column.Stem.Length..];
        if (ending.Length == 0)
        {
            unit = column.BareUnit;
            return true;
        }

        unit = ending[0] == '_' ? MeasureUnits.WithHeaderSuffix(ending[1..].ToLowerInvariant()) : null;
        return unit is not null && column.CanBeIn(unit);
    }
}
