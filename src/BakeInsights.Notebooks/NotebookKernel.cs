using System.Text.RegularExpressions;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.PackageManagement;

namespace BakeInsights.Notebooks;

/// <summary>The kernels of one run: C#, HTML and JavaScript.</summary>
internal sealed partial class NotebookKernel : IDisposable
{
    private const string LoadCall = "BakeInsights.Notebooks.NotebookExtension.Load(Microsoft.DotNet.Interactive.Kernel.Root);";

    private readonly CSharpKernel _csharp;
    private readonly CompositeKernel _root;
    private bool _hasToolkit;

    public NotebookKernel()
    {
        _csharp = new CSharpKernel()
            .UseNugetDirective((kernel, packages) =>
            {
                kernel.AddAssemblyReferences(packages.SelectMany(package => package.AssemblyPaths));
                return Task.CompletedTask;
            })
            .UseKernelHelpers()
            .UseWho()
            .UseValueSharing();
        _root = new CompositeKernel { DefaultKernelName = _csharp.Name };

        // Notebook files name the language, not the kernel.
        _root.Add(_csharp, ["C#", "c#"]);
        _root.Add(new HtmlKernel(), ["HTML"]);
        _root.Add(new JavaScriptKernel(), ["JavaScript", "js"]);
    }

    /// <summary>Runs a cell and gives what happened, in order.</summary>
    public async Task<IReadOnlyList<KernelEvent>> RunAsync(NotebookCell cell, CancellationToken cancellation)
    {
        var events = new List<KernelEvent>();
        var code = cell.Source;
        if (OwnPackage().IsMatch(code))
        {
            // The line is emptied, not removed, so that an error's line number stays right.
            code = OwnPackage().Replace(code, "");
            events.AddRange(await LoadToolkitAsync(cancellation));
        }

        events.AddRange(await SubmitAsync(code, cell.KernelName, cancellation));
        return events;
    }

    public void Dispose() => _root.Dispose();

    private async Task<IReadOnlyList<KernelEvent>> LoadToolkitAsync(CancellationToken cancellation)
    {
        if (_hasToolkit)
        {
            return [];
        }

        _hasToolkit = true;
        _csharp.AddAssemblyReferences(SharedAssemblies.FilesOfTheToolkit());
        return await SubmitAsync(LoadCall, _csharp.Name, cancellation);
    }

    private async Task<IReadOnlyList<KernelEvent>> SubmitAsync(string code, string? kernel, CancellationToken cancellation)
    {
        var result = await _root.SendAsync(new SubmitCode(code, kernel), cancellation);
        return result.Events;
    }

    // Our own packages are in this process already: what runs is what was built, and nothing is restored.
    [GeneratedRegex("""^[ \t]*#r[ \t]+"nuget:[ \t]*BakeInsights(\.[A-Za-z]+)*[ \t]*(,[^"\n]*)?"[ \t]*$""", RegexOptions.Multiline)]
    private static partial Regex OwnPackage();
}
