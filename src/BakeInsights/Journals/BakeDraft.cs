namespace BakeInsights;

/// <summary>A bake while it is being put together; <see cref="Finish"/> makes the immutable one.</summary>
public sealed class BakeDraft
{
    private readonly RowValues _row = new(BakeColumns.Layout);

    /// <summary>Starts a bake of which nothing but its name and day is known.</summary>
    public BakeDraft(string id, DateOnly bakedOn)
    {
        Set(BakeColumns.Id, id);
        _row.Day = bakedOn;
    }

    /// <summary>The day of the bake.</summary>
    public DateOnly BakedOn => _row.Day;

    /// <summary>Sets a quantity, in the column's canonical unit and inside its range.</summary>
    public BakeDraft Set(QuantityColumn column, double value)
    {
        // Written so that NaN is refused too.
        if (!(value >= column.Low && value <= column.High))
        {
            throw new ArgumentOutOfRangeException(
                nameof(value), value, FormattableString.Invariant($"{column} goes from {column.Low} to {column.High}."));
        }

        _row.Quantities[column.Index] = value;
        return this;
    }

    /// <summary>Sets a choice to one of the column's words.</summary>
    public BakeDraft Set(ChoiceColumn column, string word)
    {
        var index = column.IndexOf(word);
        if (index < 0)
        {
            throw new ArgumentException($"{column} takes {string.Join(", ", column.Values)}, not '{word}'.", nameof(word));
        }

        _row.Choices[column.Index] = index;
        return this;
    }

    /// <summary>Sets a text, without the blanks around it; a blank one is missing.</summary>
    /// <exception cref="ArgumentException">The text has a line break in it, or is the blank name of a bake.</exception>
    public BakeDraft Set(TextColumn column, string text)
    {
        var cell = CellText.Require(text, nameof(text));
        if (column == BakeColumns.Id && cell.Length == 0)
        {
            throw new ArgumentException("A bake has a name: its bake_id can't be blank.", nameof(text));
        }

        _row.Texts[column.Index] = cell.Length == 0 ? null : cell;
        return this;
    }

    /// <summary>Keeps a cell of a column that the toolkit does not know, without the blanks around it.</summary>
    /// <exception cref="ArgumentException">
    /// The column has no name, or one that the toolkit knows, or one of the two texts has a line break in it.
    /// </exception>
    public BakeDraft Keep(string column, string text)
    {
        var name = CellText.Require(column, nameof(column));
        if (name.Length == 0 || BakeColumns.All.Any(known => HeaderReader.Names([name], BakeColumns.Layout, known)))
        {
            throw new ArgumentException($"'{name}' can't be the name of a column of the journal's own.", nameof(column));
        }

        var cell = CellText.Require(text, nameof(text));
        if (cell.Length == 0)
        {
            _row.Forget(name);
        }
        else
        {
            _row.Keep(name, cell);
        }

        return this;
    }

    /// <summary>The bake as it stands now; later changes of the draft don't reach it.</summary>
    public Bake Finish(SourceLine origin)
    {
        ArgumentNullException.ThrowIfNull(origin);
        var row = _row.Copy();
        row.File = origin.File;
        row.Line = origin.Line;
        return new Bake(row);
    }
}
