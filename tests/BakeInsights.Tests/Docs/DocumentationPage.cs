using System.Text;
using BakeInsights.TestKit;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;

namespace BakeInsights.Tests;

/// <summary>
/// A page of the documentation whose examples are run: each block marked csharp is followed by a block marked text that
/// holds what the code's last expression gives, a string or several. The blocks of a page build on each other.
/// </summary>
internal static class DocumentationPage
{
    private const string Fence = "```";

    private static readonly ScriptOptions Options = ScriptOptions.Default
        .WithReferences(typeof(Formula).Assembly, typeof(Inference.FitProblem).Assembly, typeof(Enumerable).Assembly)
        .WithImports("System", "System.Linq", "System.Collections.Generic", "BakeInsights", "BakeInsights.Inference");

    /// <summary>The page with every block of output as it comes out now.</summary>
    public static async Task<string> WithFreshOutputAsync(string page)
    {
        var lines = page.ReplaceLineEndings("\n").Split('\n');
        var text = new StringBuilder();
        ScriptState<object>? state = null;
        string? output = null;
        for (var i = 0; i < lines.Length; i++)
        {
            text.Append(lines[i]).Append(i == lines.Length - 1 ? "" : "\n");
            if (lines[i] == Fence + "csharp")
            {
                var code = string.Join('\n', lines.Skip(i + 1).TakeWhile(line => line != Fence));
                state = await RunAsync(code, state);
                output = Shown(state.ReturnValue, code);
            }
            else if (lines[i] == Fence + "text" && output is not null)
            {
                text.Append(output).Append('\n');
                output = null;
                i += lines.Skip(i + 1).TakeWhile(line => line != Fence).Count();
            }
        }

        return output is null ? text.ToString() : throw new InvalidOperationException("The last example has no block of output.");
    }

    // A script is a thread of its own as far as culture goes, and prints as the host's culture would.
    private static Task<ScriptState<object>> RunAsync(string code, ScriptState<object>? state)
    {
        // A reader starts in the checkout's folder; tests don't.
        var here = code.Replace("\"data-demo/", $"@\"{Repository.Path("data-demo")}/", StringComparison.Ordinal);
        var whole = "System.Globalization.CultureInfo.CurrentCulture = System.Globalization.CultureInfo.InvariantCulture;\n" + here;
        return state is null ? CSharpScript.RunAsync(whole, Options) : state.ContinueWithAsync(whole, Options);
    }

    private static string Shown(object? value, string code) => value switch
    {
        string one => one,
        IEnumerable<string> several => string.Join('\n', several),
        _ => throw new InvalidOperationException($"An example ends in a string or several; this one does not:\n{code}"),
    };
}
