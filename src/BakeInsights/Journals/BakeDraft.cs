using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>A bake while it is being put together; <see cref="Finish"/> makes the immutable one.</summary>
public sealed class BakeDraft
{
    private readonly double[] _quantities = new double[BakeColumns.QuantityCount];
    private readonly int[] _choices = new int[BakeColumns.ChoiceCount];
    private readonly string?[] _texts = new string?[BakeColumns.TextCount];
    private readonly ImmutableSortedDictionary<string, string>.Builder _ownColumns =
        ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);

    /// <summary>Starts a bake of which nothing but its name and day is known.</summary>
    public BakeDraft(string id, DateOnly bakedOn)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        Array.Fill(_quantities, double.NaN);
        Array.Fill(_choices, -1);
        _texts[BakeColumns.Id.Index] = id;
        BakedOn = bakedOn;
    }

    /// <summary>The day of the bake.</summary>
    public DateOnly BakedOn { get; }

    /// <summary>Sets a quantity, in the column's canonical unit and inside its range.</summary>
    public BakeDraft Set(QuantityColumn column, double value)
    {
        // Written so that NaN is refused too.
        if (!(value >= column.Low && value <= column.High))
        {
            throw new ArgumentOutOfRangeException(
                nameof(value), value, FormattableString.Invariant($"{column} goes from {column.Low} to {column.High}."));
        }

        _quantities[column.Index] = value;
        return this;
    }

    /// <summary>Sets a choice to one of the column's words.</summary>
    public BakeDraft Set(ChoiceColumn column, string word)
    {
        var index = column.Values.IndexOf(word);
        if (index < 0)
        {
            throw new ArgumentException($"{column} takes {string.Join(", ", column.Values)}, not '{word}'.", nameof(word));
        }

        _choices[column.Index] = index;
        return this;
    }

    /// <summary>Sets a text.</summary>
    public BakeDraft Set(TextColumn column, string text)
    {
        _texts[column.Index] = text;
        return this;
    }

    /// <summary>Keeps a cell of a column that the toolkit does not know.</summary>
    public BakeDraft Keep(string column, string text)
    {
        _ownColumns[column] = text;
        return this;
    }

    /// <summary>The bake as it stands now; later changes of the draft don't reach it.</summary>
    public Bake Finish(SourceLine origin) => new(
        origin,
        BakedOn,
        (double[])_quantities.Clone(),
        (int[])_choices.Clone(),
        (string?[])_texts.Clone(),
        _ownColumns.ToImmutable());
}

file static class ReadOnlyListExtensions
{
    public static int IndexOf(this IReadOnlyList<string> words, string word)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] == word)
            {
                return i;
            }
        }

        return -1;
    }
}
