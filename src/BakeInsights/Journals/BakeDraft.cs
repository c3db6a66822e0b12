namespace BakeInsights;

/// <summary>A bake while it is being put together; <see cref="Finish"/> makes the immutable one.</summary>
public sealed class BakeDraft
{
    private readonly RowValues _row = new(BakeColumns.Layout);

    /// <summary>Starts a bake of which nothing but its name and day is known.</summary>
    public BakeDraft(string id, DateOnly bakedOn)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        _row.Texts[BakeColumns.Id.Index] = id;
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

    /// <summary>Sets a text.</summary>
    public BakeDraft Set(TextColumn column, string text)
    {
        _row.Texts[column.Index] = text;
        return this;
    }

    /// <summary>Keeps a cell of a column that the toolkit does not know.</summary>
    public BakeDraft Keep(string column, string text)
    {
        _row.Keep(column, text);
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
