using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Formatting;

namespace BakeInsights.Notebooks;

/// <summary>
/// JavaScript cells as what they are in a document: script elements. The host's own way sends the script to a browser that
/// looks at the notebook, and a notebook that is executed without one fails there.
/// </summary>
internal static class ScriptCells
{
    private const string JavaScript = "javascript";

    /// <summary>Shows the scripts of JavaScript cells as HTML; where the host has no such cells, nothing happens.</summary>
    /// <param name="root">The host's root kernel.</param>
    public static void ShowAsHtml(Kernel root) => root.FindKernelByName(JavaScript)?.AddMiddleware((command, context, next) =>
    {
        if (command is not SubmitCode script)
        {
            return next(command, context);
        }

        context.DisplayAs($"<script type=\"text/javascript\">\n{script.Code.Trim()}\n</script>", HtmlFormatter.MimeType);
        return Task.CompletedTask;
    });
}
