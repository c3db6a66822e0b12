namespace BakeInsights;

/// <summary>A blank to fill in by hand, and the field of the journal that it is typed into.</summary>
/// <param name="Name">The field's name, as <c>add --set</c> takes it with the unit beside it.</param>
/// <param name="Label">What belongs there, in a few words.</param>
/// <param name="Unit">The unit to write in; empty for what has none.</param>
/// <param name="Words">The words to choose from; empty where anything can be written.</param>
/// <param name="Given">What the sheet fills in by itself; empty when nothing.</param>
public sealed record SheetBlank(string Name, string Label, string Unit, IReadOnlyList<string> Words, string Given)
{
    /// <summary>
    /// The blanks of a journal, in the order of its last file's columns. Temperatures are asked in the chosen units; all
    /// else as the file's columns have it, for the formula is in grams too.
    /// </summary>
    /// <param name="form">What the journal asks of one more bake.</param>
    /// <param name="units">The units that temperatures are read in.</param>
    /// <param name="given">What the sheet knows already, by column; what isn't there is left blank.</param>
    public static IReadOnlyList<SheetBlank> Of(
        BakeForm form, UnitSystem units, IReadOnlyDictionary<JournalColumn, string> given)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(given);
        return [.. form.Fields.Select(field => Of(field, units, given))];
    }

    private static SheetBlank Of(BakeField field, UnitSystem units, IReadOnlyDictionary<JournalColumn, string> given)
    {
        // A name that says a unit is read in it; the name without one is read in the units of the command.
        var asked = field.Column is QuantityColumn { Dimension: Dimension.Temperature } ? field.UnitIn(units) : field.UnitIn(null);
        var name = asked == field.Unit ? field.Name : field.Column!.NameWithoutUnit;
        var unit = field.Column is QuantityColumn { Dimension: Dimension.TimeOfDay } ? "h:min" : asked?.Symbol ?? "";
        var words = field.Column is ChoiceColumn choice ? choice.Values : [];
        return new SheetBlank(
            name,
            field.Column?.Meaning ?? "",
            unit,
            words,
            field.Column is { } column ? given.GetValueOrDefault(column, "") : "");
    }
}
