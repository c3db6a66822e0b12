namespace BakeInsights.Cli;

/// <summary>Puts labels for names on a sheet, in what its user wrote too.</summary>
internal static class SheetNames
{
    /// <summary>The sheet with labels for names.</summary>
    public static Sheet Hide(Sheet sheet, HiddenNames hidden) => sheet with
    {
        Name = hidden.In(sheet.Name),
        Journal = hidden.In(sheet.Journal),
        FormulaName = hidden.In(sheet.FormulaName),
        Blanks = [.. sheet.Blanks.Select(blank => blank with { Name = hidden.In(blank.Name), Given = hidden.In(blank.Given) })],
    };
}
