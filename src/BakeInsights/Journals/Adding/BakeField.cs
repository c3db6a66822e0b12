using System.Globalization;

namespace BakeInsights;

/// <summary>A column of the file that a new bake goes to.</summary>
public sealed class BakeField
{
    // A converted number is written so exactly that it gives back what was typed to this part of its last digit.
    private const double KeptPart = 0.005;
    private const int MostDecimals = 8;

    private readonly ColumnBinding _binding;

    internal BakeField(ColumnBinding binding) => _binding = binding;

    /// <summary>The column's name as the file has it.</summary>
    public string Name => _binding.Header;

    /// <summary>The known column that it is; null for one of the journal's own.</summary>
    public JournalColumn? Column => _binding.Column;

    /// <summary>The unit in the column's name; null when it has none.</summary>
    public MeasureUnit? Unit => _binding.Unit;

    internal int Index => _binding.Index;

    /// <summary>The unit that a bare number is asked in; null for what has no unit.</summary>
    /// <param name="system">The units that the baker thinks in; null for the file's own.</param>
    public MeasureUnit? UnitIn(UnitSystem? system) => Column is not QuantityColumn quantity
        ? null
        : system is { } chosen
            ? MeasureUnits.WithText(DisplayUnit.For(quantity.Dimension, chosen).Label)
            : Unit ?? MeasureUnits.Canonical(quantity.Dimension);

    /// <summary>
    /// What is written for a text that was typed: a bare number is turned from the unit it was asked in to the
    /// column's; anything else, a number with a unit of its own too, is written as it was typed.
    /// </summary>
    /// <param name="typed">The text.</param>
    /// <param name="asked">The unit that a bare number is in; null when there is none.</param>
    public string CellOf(string typed, MeasureUnit? asked)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (Column is not QuantityColumn
            || asked is null
            || asked == Unit
            || !QuantityText.TryParse(typed, out var quantity)
            || quantity.Unit is not null)
        {
            return Column is QuantityColumn or DayColumn ? typed : CellText.Marked(typed);
        }

        return Unit?.Dimension == asked.Dimension
            ? Converted(quantity.Value, DecimalsOf(typed), asked, Unit)
            : $"{typed} {asked.Symbol}";
    }

    /// <summary>What the column would hold for a bake; null where the bake has nothing for it, or it held cups.</summary>
    /// <remarks>A weight is no way to say again what was filled by the cup, so such a cell is not made up.</remarks>
    public string? CellFor(Bake bake)
    {
        ArgumentNullException.ThrowIfNull(bake);
        return Column switch
        {
            QuantityColumn { Dimension: Dimension.TimeOfDay } => null,
            QuantityColumn quantity when bake[quantity] is { } value => CellFor(quantity, value),
            ChoiceColumn choice => bake[choice],
            TextColumn text => bake[text],
            null => bake.OwnColumns.GetValueOrDefault(Name),
            _ => null,
        };
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    private string? CellFor(QuantityColumn quantity, double value)
    {
        var canonical = MeasureUnits.Canonical(quantity.Dimension);
        return canonical is null ? Number(value)
            : Unit is null ? $"{Number(value)} {canonical.Symbol}"
            : Unit.Dimension == quantity.Dimension ? Number(Exact(value, canonical, Unit))
            : null;
    }

    // The digits that a kitchen's numbers have, without the dust of a conversion. Three digits behind a point could
    // be thousands in a file with decimal commas; a fourth rules that out.
    private static string Number(double value, int decimals = 6)
    {
        var text = Math.Round(value, decimals).ToString(CultureInfo.InvariantCulture);
        return text.Length > 4 && text[^4] == '.' ? text + "0" : text;
    }

    private static int DecimalsOf(string typed)
    {
        var mark = typed.AsSpan().LastIndexOfAny('.', ',');
        return mark < 0 ? 0 : typed.AsSpan(mark + 1).Trim().Length;
    }

    private static string Converted(double typed, int typedDecimals, MeasureUnit from, MeasureUnit to)
    {
        var exact = Exact(typed, from, to);
        var allowed = KeptPart * Math.Pow(10, -typedDecimals) * Math.Abs(Exact(1, from, to) - Exact(0, from, to));
        var decimals = 0;
        while (decimals < MostDecimals && Math.Abs(Math.Round(exact, decimals) - exact) > allowed)
        {
            decimals++;
        }

        return Number(exact, decimals);
    }

    // All units are straight lines: value = canonical x factor + offset.
    private static double Exact(double value, MeasureUnit from, MeasureUnit to)
    {
        var offset = to.ToCanonical(0);
        return (from.ToCanonical(value) - offset) / (to.ToCanonical(1) - offset);
    }
}
