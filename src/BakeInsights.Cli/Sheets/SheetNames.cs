namespace BakeInsights.Cli;

/// <summary>Puts labels for names on a sheet, in what its user wrote too.</summary>
internal static class SheetNames
{
    /// <summary>The wishes with labels for names: what they look for has labels too.</summary>
    public static SheetWishes Hide(SheetWishes wishes, HiddenNames hidden) => wishes with
    {
        Formula = wishes.Formula is { } formula ? hidden.In(formula) : null,
        Bakes = [.. wishes.Bakes.Select(bake => bake with { Name = hidden.In(bake.Name) })],
    };

    /// <summary>The sheet with labels for names.</summary>
    public static Sheet Hide(Sheet sheet, HiddenNames hidden) => sheet with
    {
        Name = hidden.In(sheet.Name),
        Journal = hidden.In(sheet.Journal),
        FormulaName = hidden.In(sheet.FormulaName),
        Blanks = [.. sheet.Blanks.Select(blank => blank with { Name = hidden.In(blank.Name), Given = hidden.In(blank.Given) })],
    };
}
