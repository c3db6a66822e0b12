using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary><c>bakeinsights sheet</c>: bake sheets to print, with the day's timetable.</summary>
internal sealed class SheetCommand : Command<SheetSettings>
{
    private const string Extension = ".html";

    public override int Execute(CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var units = UnitsOption.Read(settings.Units);
        var paper = settings.Paper(units);
        var wishes = settings.Wishes(units);
        var path = settings.RequirePath();
        if (settings.To is { } target)
        {
            RequireWritable(target, path);
        }

        var sheets = Made(settings, path, wishes, units);
        if (settings.To is { } page)
        {
            WholeFile.Write(page, writer => SheetPage.Write(sheets, paper, units, writer));
        }

        Console.Out.Write(settings.Json ? JsonText.Write(SheetsJson.From(sheets)) + "\n"
            : settings.To is { } written ? written + "\n"
            : string.Join("\n", sheets.Select(sheet => SheetView.Of(sheet, units).ToText())));
        return ExitCode.Done;
    }

    private static IReadOnlyList<Sheet> Made(SheetSettings settings, string path, SheetWishes wishes, UnitSystem units)
    {
        var journal = Journal.Read(path);
        var form = BakeForm.Open(path);
        if (!settings.HideNames)
        {
            return Value(Sheets.Of(journal, form, wishes, units));
        }

        var hidden = HiddenNames.Of(journal);
        return
        [
            .. Value(Sheets.Of(hidden.In(journal), form, SheetNames.Hide(wishes, hidden), units)).Select(sheet => SheetNames.Hide(sheet, hidden)),
        ];
    }

    private static IReadOnlyList<Sheet> Value(Inference.Attempt<IReadOnlyList<Sheet>> attempt) =>
        attempt.Match(sheets => sheets, problem => throw new CommandFailure($"{problem.Message} {problem.Remedy}"));

    // Before the work.
    private static void RequireWritable(string target, string journal)
    {
        if (!Path.GetExtension(target).Equals(Extension, StringComparison.OrdinalIgnoreCase))
        {
            throw new CommandFailure($"{target} can't be written: give a name that ends in {Extension}.");
        }

        if (Path.GetFullPath(target).Equals(Path.GetFullPath(journal), StringComparison.OrdinalIgnoreCase))
        {
            throw new CommandFailure($"{target} is the journal itself: give another name with --to.");
        }

        var folder = Path.GetDirectoryName(Path.GetFullPath(target))!;
        if (!Directory.Exists(folder))
        {
            throw new CommandFailure($"There is no folder {folder}: make it, or give another name with --to.");
        }
    }
}
