using System.ComponentModel;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights add</c> is asked.</summary>
internal sealed class AddSettings : CommandSettings
{
    [CommandArgument(0, "<journal>")]
    [Description("The journal that gets the bake: a folder with bakes*.csv in it, or one CSV file of bakes.")]
    public required string JournalPath { get; init; }

    [CommandOption("--set <FIELD=VALUE>")]
    [Description("Fill in a field; may be given several times. Then nothing is asked.")]
    public string[] Set { get; init; } = [];

    [CommandOption("--units <UNITS>")]
    [Description("The units that numbers are typed in: metric or us. Else those of the file's columns.")]
    public string? Units { get; init; }

    /// <summary>The units that the baker thinks in; null for the file's own.</summary>
    /// <exception cref="CommandFailure">There are none of that name.</exception>
    public UnitSystem? UnitSystem() => Units is null ? null : UnitsOption.Read(Units);

    /// <summary>The bake that was given by <c>--set</c>.</summary>
    /// <exception cref="CommandFailure">A field is not there or given twice, or its text can't be a cell.</exception>
    public BakeEntry Entry(BakeForm form)
    {
        var entry = BakeEntry.Of(form);
        var set = new HashSet<BakeField>();
        foreach (var pair in Set.Select(NamedValue.Of))
        {
            var (field, unit) = form.Find(pair.Name) ?? throw new CommandFailure(
                $"{form.File} has no column {pair.Name}: {NearestNames.List(pair.Name, form.Fields.Select(each => each.Name))}.");
            if (!set.Add(field))
            {
                throw new CommandFailure($"The field {field} is given twice: give it once.");
            }

            entry = With(entry, field, pair.Value, unit);
        }

        return entry;
    }

    private BakeEntry With(BakeEntry entry, BakeField field, string text, MeasureUnit? unit)
    {
        try
        {
            return entry.With(field, text, unit ?? field.UnitIn(UnitSystem()));
        }
        catch (ArgumentException)
        {
            throw new CommandFailure($"The text for {field} has a line break in it: a cell holds one line, write a blank instead.");
        }
    }
}
