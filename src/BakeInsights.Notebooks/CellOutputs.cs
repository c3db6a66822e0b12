using System.Collections.Immutable;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace BakeInsights.Notebooks;

/// <summary>A kernel's events as a notebook's outputs.</summary>
internal static class CellOutputs
{
    public static ImmutableArray<NotebookOutput> From(IEnumerable<KernelEvent> events)
    {
        var outputs = ImmutableArray.CreateBuilder<NotebookOutput>();
        var places = new Dictionary<string, int>();
        foreach (var happened in events)
        {
            switch (happened)
            {
                case StandardOutputValueProduced text:
                    Print(outputs, "stdout", text);
                    break;
                case StandardErrorValueProduced text:
                    Print(outputs, "stderr", text);
                    break;
                case DisplayedValueUpdated update:
                    // Jupyter too passes over an update of something that it has not shown.
                    if (places.TryGetValue(update.ValueId ?? "", out var place))
                    {
                        outputs[place] = Shown(update, isResult: false);
                    }

                    break;
                case DisplayedValueProduced or ReturnValueProduced:
                    var value = (DisplayEvent)happened;
                    places[value.ValueId ?? ""] = outputs.Count;
                    outputs.Add(Shown(value, happened is ReturnValueProduced));
                    break;
                case CommandFailed failed:
                    outputs.Add(Error(failed));
                    break;
            }
        }

        return outputs.ToImmutable();
    }

    private static void Print(ImmutableArray<NotebookOutput>.Builder outputs, string name, DisplayEvent printed)
    {
        var text = string.Concat(printed.FormattedValues.Select(form => form.Value)).ReplaceLineEndings("\n");
        if (outputs.LastOrDefault() is PrintedText last && last.Name == name)
        {
            outputs[^1] = last with { Text = last.Text + text };
        }
        else
        {
            outputs.Add(new PrintedText(name, text));
        }
    }

    private static ShownValue Shown(DisplayEvent value, bool isResult) =>
        new([.. value.FormattedValues.Select(Form)], isResult);

    private static KeyValuePair<string, string> Form(FormattedValue form) =>
        KeyValuePair.Create(form.MimeType, form.Value.ReplaceLineEndings("\n"));

    // Neither stack nor file names: they differ between machines, and tell a baker nothing.
    private static CellError Error(CommandFailed failed)
    {
        var text = failed.Exception switch
        {
            null => failed.Message,
            { InnerException: CompilationErrorException compilation } =>
                string.Join("\n", compilation.Diagnostics.Select(diagnostic => diagnostic.ToString())),
            var error => Chain(error),
        };
        return new CellError(failed.Exception?.GetType().Name ?? "Error", text.ReplaceLineEndings("\n").Trim());
    }

    private static string Chain(Exception error)
    {
        var text = $"{error.GetType().Name}: {error.Message}";
        return error.InnerException is { } inner ? $"{text}\n{Chain(inner)}" : text;
    }
}
