using System.ComponentModel;
using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights sheet</c> is asked.</summary>
internal sealed class SheetSettings : KitchenSettings
{
    [CommandOption("--finish-by <TIME>")]
    [Description("When the bread has to be cut at the latest, as 13:00. Without --start, the start is counted back from it.")]
    public string? FinishBy { get; init; }

    [CommandOption("--start <TIME>")]
    [Description("When weighing begins, as 9:00.")]
    public string? Start { get; init; }

    [CommandOption("--bake <BAKE>")]
    [Description("One bake of a class, as \"bench A: dough_temp=76F, hydration=68, yeast=0.8, salt=2\"; once for each.")]
    public string[] Bake { get; init; } = [];

    [CommandOption("--formula <NAME>")]
    [Description("A formula of formulas.csv or of the bakes. Else the journal's typical dough.")]
    public string? Formula { get; init; }

    [CommandOption("--loaves <N>")]
    [Description("Pieces of each dough.")]
    public string? Loaves { get; init; }

    [CommandOption("--piece-g <G>")]
    [Description("Dough in one piece, in grams.")]
    public string? PieceG { get; init; }

    [CommandOption("--cups <FILLING>")]
    [Description("Cups and spoons beside the grams, the flour spooned, scooped or sifted.")]
    public string? Cups { get; init; }

    [CommandOption("--taps <COLD,HOT>")]
    [Description("The cold and the hot tap, as 12C,55C. Else 15 and 50 °C.")]
    public string? Taps { get; init; }

    [CommandOption("--ice <G>")]
    [Description("Ice at hand, in grams. Else as much as is asked for.")]
    public string? Ice { get; init; }

    [CommandOption("--paper <PAPER>")]
    [Description("a4 or letter. Else a4 with metric units and letter with us.")]
    public string? PaperName { get; init; }

    [CommandOption("--to <FILE>")]
    [Description("Where to write the page to print, FILE.html. Else the sheet is printed here as text.")]
    public string? To { get; init; }

    /// <summary>The paper.</summary>
    /// <exception cref="CommandFailure">There is none of that name.</exception>
    public Paper Paper(UnitSystem units) => PaperName switch
    {
        null => units == UnitSystem.Us ? Reports.Paper.Letter : Reports.Paper.A4,
        "a4" => Reports.Paper.A4,
        "letter" => Reports.Paper.Letter,
        _ => throw new CommandFailure($"There is no paper {PaperName}: say a4 or letter."),
    };

    /// <summary>What is asked of the sheets.</summary>
    /// <exception cref="CommandFailure">A value can't be read.</exception>
    public SheetWishes Wishes(UnitSystem units)
    {
        var values = new SheetValues(units);
        var taps = values.BothTaps(Taps);
        var kitchen = new SheetKitchen
        {
            Room = values.Temperature("kitchen", Kitchen),
            Flour = values.Temperature("flour-temp", FlourTemp),
            IceG = values.Number("ice", Ice),
        };
        return new SheetWishes
        {
            Bakes = [.. Bake.Select(values.Bake)],
            Formula = Formula,
            Loaves = values.Whole("loaves", Loaves),
            PieceG = values.Number("piece-g", PieceG),
            Cups = Cups is null ? null : SheetValues.Filling(Cups),
            Kitchen = taps is { } both ? kitchen with { Cold = both.Cold, Hot = both.Hot } : kitchen,
            Start = SheetValues.Time("start", Start),
            FinishBy = SheetValues.Time("finish-by", FinishBy),
        };
    }
}
