namespace BakeInsights;

/// <summary>Finds out what each column of a file holds, from its header.</summary>
/// <remarks>
/// Names as the toolkit has them come first, wherever in the header they stand; a name of the trade
/// (<see cref="HeaderAliases"/>) gets a column that nobody claims by its own name. What has no meaning, or more than
/// one, is kept as text.
/// </remarks>
internal static class HeaderReader
{
    /// <summary>Binds the names of a header; remarks go to <paramref name="notices"/>.</summary>
    public static IReadOnlyList<ColumnBinding> Read(
        IReadOnlyList<string> headers, TableLayout layout, SourceLine at, NoticeLog notices)
    {
        var known = headers.Select((header, i) => ByName(i, header, layout)).ToList();
        var claimed = known.Select(binding => binding?.Column).OfType<JournalColumn>().ToHashSet();
        var bindings = new List<ColumnBinding>();
        for (var i = 0; i < headers.Count; i++)
        {
            var header = CellText.Unmarked(headers[i].Trim());
            if (bindings.Find(other => other.Header == header || (known[i] is { } name && name.Column == other.Column)) is { } earlier)
            {
                notices.Add(Notices.ColumnTwice(at, header, earlier.Header));
                continue;
            }

            bindings.Add(known[i] ?? ByAlias(i, header, layout, claimed, at, notices));
        }

        RemarkOnYeastKind(bindings, at, notices);
        return bindings;
    }

    /// <summary>Whether a header names a column.</summary>
    public static bool Names(IReadOnlyList<string> headers, TableLayout layout, JournalColumn column) =>
        Read(headers, layout, new SourceLine("", 0), new NoticeLog()).Any(binding => binding.Column == column);

    /// <summary>How many names of a header are known columns.</summary>
    public static int Known(IReadOnlyList<string> headers, TableLayout layout) =>
        Read(headers, layout, new SourceLine("", 0), new NoticeLog()).Count(binding => binding.Column is not null);

    private static void RemarkOnYeastKind(List<ColumnBinding> bindings, SourceLine at, NoticeLog notices)
    {
        if (bindings.Find(binding => binding.Column == BakeColumns.Yeast) is { } yeast
            && !bindings.Exists(binding => binding.Column == BakeColumns.YeastKind))
        {
            notices.Add(Notices.YeastKindMissing(at, yeast.Header, yeast.Header));
        }
    }

    private static ColumnBinding? ByName(int index, string header, TableLayout layout)
    {
        var text = HeaderText.Of(header);
        return layout.Columns.Select(column => Bind(index, header, text, column, column.NameWithoutUnit)).FirstOrDefault(bound => bound is not null);
    }

    private static ColumnBinding ByAlias(
        int index, string header, TableLayout layout, HashSet<JournalColumn> claimed, SourceLine at, NoticeLog notices)
    {
        var text = HeaderText.Of(header);
        var own = new ColumnBinding(index, header, null, null);
        var bound = layout.Columns
            .SelectMany(column => column.OtherNames.Select(alias => Bind(index, header, text, column, alias)))
            .FirstOrDefault(binding => binding is not null);
        if (bound is { Column: { } column })
        {
            if (claimed.Add(column))
            {
                notices.Add(Notices.ColumnReadAs(at, bound.Header, column));
                return bound;
            }

            notices.Add(Notices.ColumnTaken(at, bound.Header, column));
            return own;
        }

        var meanings = HeaderAliases.Ambiguous
            .FirstOrDefault(each => each.Columns.Any(stem => IsNamed(text, each.Name, WithStem(layout, stem)))).Columns ?? [];
        var possible = meanings.Select(stem => WithStem(layout, stem)).OfType<JournalColumn>().ToList();
        notices.Add(possible.Count > 1
            ? Notices.ColumnAmbiguous(at, own.Header, possible)
            : Notices.ColumnUnknown(at, own.Header));
        return own;
    }

    private static bool IsNamed(HeaderText text, string name, JournalColumn? column) =>
        column is not null && Bind(0, "", text, column, name) is not null;

    private static ColumnBinding? Bind(int index, string header, HeaderText text, JournalColumn column, string name)
    {
        if (!text.IsWithUnit(name, out var ending))
        {
            return null;
        }

        var unit = ending.Length == 0 ? (column as QuantityColumn)?.BareUnit : MeasureUnits.WithHeaderSuffix(ending);
        var fits = column is QuantityColumn quantity && unit is not null && quantity.CanBeIn(unit);

        // "Crumb (1 to 5)": behind a name that takes no unit, brackets hold a remark.
        var isRemark = unit is null && text.Bracket is not null && !TakesUnit(column);
        return ending.Length == 0 || fits || isRemark ? new(index, header.Trim(), column, unit) : null;
    }

    private static bool TakesUnit(JournalColumn column) =>
        column is QuantityColumn quantity && MeasureUnits.Canonical(quantity.Dimension) is not null;

    private static JournalColumn? WithStem(TableLayout layout, string stem) =>
        layout.Columns.FirstOrDefault(column => column.NameWithoutUnit == stem);
}
