using BakeInsights.Reports;
using C = BakeInsights.BakeColumns;

namespace BakeInsights.Cli;

/// <summary>How one field of a bake is asked for.</summary>
internal sealed class FieldQuestion
{
    // What a kitchen sets the same from bake to bake. What it measures is not offered: Enter would make up a reading.
    private static readonly HashSet<JournalColumn> Kept =
    [
        C.Baker, C.Formula, C.Flour, C.FlourKind, C.FlourMeasure, C.Water, C.Salt, C.Yeast, C.YeastKind, C.Sugar, C.Fat, C.Milk,
        C.Egg, C.Honey, C.Preferment, C.PrefermentHydration, C.OvenTemp, C.Mix, C.Baking, C.Steam, C.LoafCount, C.Group,
    ];

    private readonly UnitSystem? _units;

    private FieldQuestion(BakeField field, UnitSystem? units, string? offered, string? last)
    {
        Field = field;
        _units = units;
        Offered = offered;
        Last = last;
    }

    /// <summary>The field.</summary>
    public BakeField Field { get; }

    /// <summary>The cell that Enter gives; null when Enter leaves the field empty.</summary>
    public string? Offered { get; }

    /// <summary>The unit that a bare number is in.</summary>
    public MeasureUnit? Asked => Field.UnitIn(_units);

    private string? Last { get; }

    /// <summary>The question for a field.</summary>
    /// <param name="form">The journal's form.</param>
    /// <param name="field">The field.</param>
    /// <param name="units">The units that the baker thinks in; null for the file's own.</param>
    /// <param name="today">The day that is offered.</param>
    public static FieldQuestion Of(BakeForm form, BakeField field, UnitSystem? units, DateOnly today)
    {
        var before = form.Last is { } bake ? field.CellFor(bake) : null;
        return field.Column switch
        {
            DayColumn => new(field, units, today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), null),
            { } column when column == C.Id => new(field, units, form.NextId, form.NextId is null ? before : null),
            { } column when Kept.Contains(column) => new(field, units, before, null),
            { } column when column == C.Notes => new(field, units, null, null),
            _ => new(field, units, null, before is null ? null : Shown(field, form.Last!, before, units)),
        };
    }

    /// <summary>The question in full, for a terminal of the usual width.</summary>
    public string Text
    {
        get
        {
            var question = $"{Field.Name}: {Field.Column?.Meaning ?? "a column of your own"}";
            question += Field.Column is ChoiceColumn choice ? $" ({string.Join(", ", choice.Values)})" : "";
            question += Asked is { } unit ? $", in {unit.Symbol}" : "";
            return new View([new ViewParagraph(Last is null ? question : $"{question}; last time {Last}")]).ToText();
        }
    }

    /// <summary>What stands before the answer: what Enter gives.</summary>
    /// <param name="last">The bake whose value may be offered.</param>
    public string Prompt(Bake? last) => Offered is null ? "> "
        : _units is { } units && Field.Column is QuantityColumn && last is not null
            ? $"[{EntryView.Understood(Field, last, units)}] > "
            : $"[{Offered}] > ";

    private static string Shown(BakeField field, Bake last, string cell, UnitSystem? units) => units is { } chosen
        ? EntryView.Understood(field, last, chosen)
        : field.Unit is { } unit ? $"{cell} {unit.Symbol}" : cell;
}
