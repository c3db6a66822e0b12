namespace BakeInsights;

/// <summary>A column of a journal's file that the toolkit knows.</summary>
public abstract class JournalColumn
{
    private protected JournalColumn(string name, string meaning)
    {
        Name = name;
        Meaning = meaning;
    }

    /// <summary>The canonical name, its unit at the end: <c>dough_temp_c</c>.</summary>
    public string Name { get; }

    /// <summary>What a cell of the column says, in a few words.</summary>
    public string Meaning { get; }

    /// <summary>
    /// What else bakers call the column, in small letters, words joined by underscores, without a unit; the name of a
    /// column of the file is compared without regard to letter case, blanks and hyphens.
    /// </summary>
    public IReadOnlyList<string> OtherNames => HeaderAliases.Of(NameWithoutUnit);

    /// <summary>The name without a unit.</summary>
    internal virtual string NameWithoutUnit => Name;

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>A column of numbers.</summary>
public sealed class QuantityColumn : JournalColumn
{
    internal QuantityColumn(
        int index, string stem, Dimension dimension, string meaning, double low, double high, bool isNamedForUnit = false)
        : base(isNamedForUnit ? stem : NameOf(stem, dimension), meaning)
    {
        BareUnit = isNamedForUnit ? MeasureUnits.Canonical(dimension) : null;
        Index = index;
        Stem = stem;
        Dimension = dimension;
        Low = low;
        High = high;
    }

    /// <summary>The name without its unit: <c>dough_temp</c>.</summary>
    public string Stem { get; }

    /// <summary>What the column measures; cells are kept in its canonical unit.</summary>
    public Dimension Dimension { get; }

    /// <summary>The smallest value that can be meant, in the canonical unit.</summary>
    public double Low { get; }

    /// <summary>The largest value that can be meant, in the canonical unit.</summary>
    public double High { get; }

    internal override string NameWithoutUnit => Stem;

    internal int Index { get; }

    /// <summary>The unit of cells when the header has the stem alone; null when the header has to name one.</summary>
    internal MeasureUnit? BareUnit { get; }

    /// <summary>Whether cells may be in this unit: one of the column's dimension, or a cup or spoon of an ingredient.</summary>
    internal bool CanBeIn(MeasureUnit unit) =>
        unit.Dimension == Dimension || (Dimension == Dimension.Mass && unit.Dimension == Dimension.Volume);

    private static string NameOf(string stem, Dimension dimension) =>
        MeasureUnits.Canonical(dimension) is { } unit ? $"{stem}_{unit.HeaderSuffix}" : stem;
}

/// <summary>A column whose cells hold one of a few words.</summary>
public sealed class ChoiceColumn : JournalColumn
{
    internal ChoiceColumn(int index, string name, string meaning, params string[] values)
        : base(name, meaning)
    {
        Index = index;
        Values = values;
    }

    /// <summary>The words.</summary>
    public IReadOnlyList<string> Values { get; }

    internal int Index { get; }

    /// <summary>The place of a word, whatever its letter case; -1 when the column does not know it.</summary>
    internal int IndexOf(string word)
    {
        for (var i = 0; i < Values.Count; i++)
        {
            if (Values[i].Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return -1;
    }
}

/// <summary>A column of free text.</summary>
public sealed class TextColumn : JournalColumn
{
    internal TextColumn(int index, string name, string meaning)
        : base(name, meaning)
    {
        Index = index;
    }

    internal int Index { get; }
}

/// <summary>The column of the day that a row belongs to.</summary>
public sealed class DayColumn : JournalColumn
{
    internal DayColumn(string name, string meaning)
        : base(name, meaning)
    {
    }
}
